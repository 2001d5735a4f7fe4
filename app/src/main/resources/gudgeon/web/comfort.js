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

// Held, not tapped: wet glass taps by itself. A short tap still works: it leads to a page that asks once more.
const HOLD_MS = 600;
for (const button of document.querySelectorAll('[data-hold]')) {
  const form = document.getElementById(button.dataset.hold);
  let timer = 0;
  let held = false;
  const begin = (event) => {
    if (event.button || !form) return;
    button.classList.add('holding');
    timer = setTimeout(() => {
      held = true;
      button.classList.add('held');
      for (const field of button.form.elements) {
        if (field.name && form.elements[field.name]) form.elements[field.name].value = field.value;
      }
      if (navigator.vibrate) navigator.vibrate(40);
      form.submit();
    }, HOLD_MS);
  };
  const end = () => {
    clearTimeout(timer);
    button.classList.remove('holding');
  };
  button.addEventListener('pointerdown', begin);
  for (const name of ['pointerup', 'pointercancel', 'pointerleave']) button.addEventListener(name, end);
  button.addEventListener('contextmenu', (event) => event.preventDefault());
  button.addEventListener('click', (event) => { if (held) event.preventDefault(); });
}

// Saved: a buzz that is felt through a glove.
if (document.querySelector('[data-buzz]') && navigator.vibrate) navigator.vibrate([30, 60, 30]);

// On a wide screen the drawing stands beside the plan; it is fetched when there is room for it.
const beside = document.querySelector('[data-drawing]');
if (beside && matchMedia('(min-width: 1000px)').matches) {
  const look = async (tries) => {
    const answer = await fetch(beside.dataset.drawing);
    if (!answer.ok) return;
    const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
    const drawing = page.querySelector('figure.drawing');
    if (drawing) {
      beside.append(document.adoptNode(drawing));
      beside.dataset.there = 'yes';
    } else if (tries < 20) {
      setTimeout(look, 1500, tries + 1);
    }
  };
  look(0).catch(() => {});
}
