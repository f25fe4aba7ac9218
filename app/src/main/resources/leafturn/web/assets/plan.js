// Follows a season plan that is being made, and shows the page again when it has ended.

const EVERY_MS = 1000;

async function look(plan, bar, told) {
  const answer = await fetch(plan.dataset.progress, { headers: { Accept: "application/json" } });
  if (!answer.ok) {
    return;
  }
  const { ended, done, all } = await answer.json();
  if (ended) {
    location.reload();
    return;
  }
  if (all > 0) {
    bar.max = all;
    bar.value = done;
    const tenth = Math.floor((10 * done) / all);
    if (told.dataset.tenth !== String(tenth)) {
      told.dataset.tenth = String(tenth);
      told.textContent = `${done} of ${all} programmes`;
    }
  }
  setTimeout(() => look(plan, bar, told), EVERY_MS);
}

const plan = document.getElementById("plan");
if (plan) {
  look(plan, document.getElementById("plan-bar"), document.getElementById("plan-told"));
}
