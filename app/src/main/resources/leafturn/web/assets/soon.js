// Shows a page again that waits for advice which is being worked out.

const AGAIN_MS = 1000;

setTimeout(() => location.reload(), AGAIN_MS);
