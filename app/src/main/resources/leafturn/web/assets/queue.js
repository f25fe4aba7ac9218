// What waits on this phone: entries that are not in the book yet, and what is known of the lawns.
// Pages and the service worker share it; the browser keeps it when it is closed or killed.

const DATABASE = "leafturn-log";
const ENTRIES = "entries";
const KNOWN = "known";
const LAWNS = "lawns";

let opening = null;

function open() {
  opening ??= new Promise((resolve, reject) => {
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore(ENTRIES, { keyPath: "id" });
      request.result.createObjectStore(KNOWN);
    };
    request.onsuccess = () => {
      // The browser may close the connection at any time; the next use opens it anew.
      request.result.onclose = () => (opening = null);
      request.result.onversionchange = () => {
        request.result.close();
        opening = null;
      };
      resolve(request.result);
    };
    request.onerror = () => {
      opening = null;
      reject(request.error);
    };
  });
  return opening;
}

// Runs steps in one transaction and answers only once it is on the disk: "strict" asks the browser
// to wait for that, because whoever reads "kept on this phone" pockets the phone.
async function within(store, mode, steps) {
  const database = await open();
  return new Promise((resolve, reject) => {
    const transaction = database.transaction(store, mode, { durability: "strict" });
    let result;
    transaction.oncomplete = () => resolve(result);
    transaction.onabort = () => reject(transaction.error ?? new Error("the browser gave up"));
    steps(transaction.objectStore(store), (value) => (result = value));
  });
}

function changed(how = {}) {
  const channel = new BroadcastChannel(DATABASE);
  channel.postMessage(how);
  channel.close();
}

/** Calls back whenever something was kept, sent or discarded, here or in another tab; data.sent is what was sent, data.doubt what may be a slip in it. */
export function onChange(callback) {
  new BroadcastChannel(DATABASE).onmessage = callback;
}

/** Keeps an entry; an earlier one with the same id gives way to it. */
export async function keep(entry) {
  await within(ENTRIES, "readwrite", (entries) => entries.put(entry));
  changed();
}

/** Every entry that waits, the oldest first. */
export async function entries() {
  const all = await within(ENTRIES, "readonly", (store, answer) => {
    const request = store.getAll();
    request.onsuccess = () => answer(request.result);
  });
  return all.sort((one, other) => one.keptAt.localeCompare(other.keptAt));
}

/** Removes an entry, unless it was corrected since it was kept as it is here. */
export function remove(entry) {
  return replace(entry, (store) => store.delete(entry.id));
}

/** Removes an entry that the book acknowledged, unless it was corrected since. */
export function sent(entry, doubt) {
  return replace(entry, (store) => store.delete(entry.id), { sent: entry.id, doubt });
}

/** Notes what the book said to an entry, unless it was corrected since. */
export function note(entry, answer) {
  return replace(entry, (store, stored) => store.put({ ...stored, ...answer }));
}

async function replace(entry, step, how) {
  const done = await within(ENTRIES, "readwrite", (store, answer) => {
    const request = store.get(entry.id);
    request.onsuccess = () => {
      if (request.result?.keptAt === entry.keptAt) {
        step(store, request.result);
        answer(true);
      }
    };
  });
  changed(done ? how : {});
}

/** What the book told last about the person and the lawns; undefined where nothing is kept. */
export function known() {
  return within(KNOWN, "readonly", (store, answer) => {
    const request = store.get(LAWNS);
    request.onsuccess = () => answer(request.result);
  });
}

export function remember(lawns) {
  return within(KNOWN, "readwrite", (store) => store.put(lawns, LAWNS));
}

/** After signing out nothing of the lawns stays; entries that were not sent do. */
export function forget() {
  return within(KNOWN, "readwrite", (store) => store.clear());
}
