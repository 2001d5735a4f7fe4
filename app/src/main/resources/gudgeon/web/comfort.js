// Comfort only: every page works without this file.

// A page that waits for something being worked out looks again by itself, ever less often.
const working = document.querySelector('.working[data-again]');
if (working) {
  const tries = Number(sessionStorage.getItem('again:' + location.href) || 0);
  if (tries < 40) {
    sessionStorage.setItem('again:' + location.href, String(tries + 1));
    setTimeout(() => location.reload(), 600 + 200 * tries);
  }
} else {
  sessionStorage.removeItem('again:' + location.href);
}
