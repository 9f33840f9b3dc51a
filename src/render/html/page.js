'use strict';
(() => {
  const root = document.documentElement;
  const plan = 'kerfwright ' + document.body.dataset.plan + ' ';
  const by = (id) => document.getElementById(id);
  const all = (query, within) => Array.from((within || document).querySelectorAll(query));

  // What is kept stays in this browser on this telephone. A viewer may refuse to keep anything.
  const keep = {
    get: (key) => { try { return localStorage.getItem(key); } catch { return null; } },
    set: (key, value) => {
      try {
        if (value === '') { localStorage.removeItem(key); } else { localStorage.setItem(key, value); }
        return true;
      } catch { return false; }
    },
  };
  const fields = all('[data-key]');
  const ticks = fields.filter((f) => f.type === 'checkbox');
  const written = (field) => (field.type === 'checkbox' ? (field.checked ? '1' : '') : field.value);
  const write = (field, value) => {
    if (field.type === 'checkbox') { field.checked = value === '1'; } else { field.value = value; }
  };
  const load = () => fields.forEach((f) => write(f, keep.get(plan + f.dataset.key) || ''));
  const changed = (event) => {
    const key = event.target.dataset.key;
    if (!key) { return; }
    const value = written(event.target);
    fields.filter((f) => f.dataset.key === key).forEach((f) => write(f, value));
    if (!keep.set(plan + key, value)) { by('forgets').hidden = false; }
    count();
  };

  const screens = all('.screen');
  const walk = screens.filter((s) => s.tagName === 'SECTION').filter((s) => s.id !== 'stop');
  const count = () => walk.forEach((screen) => {
    const boxes = all('input[type=checkbox]', screen);
    const done = boxes.length !== 0 ? boxes.every((b) => b.checked) : false;
    all('#contents a').filter((a) => a.hash === '#' + screen.id)
      .forEach((a) => a.classList.toggle('all', done));
  });

  // The screen stays awake while a cut is open, where the browser allows it.
  let lock = null;
  let awake = false;
  const stayAwake = async () => {
    const wanted = awake ? document.visibilityState === 'visible' : false;
    try {
      if (!wanted) {
        const held = lock;
        lock = null;
        if (held) { await held.release(); }
      } else if (!lock) {
        lock = await navigator.wakeLock.request('screen');
        lock.addEventListener('release', () => { lock = null; });
      }
    } catch { lock = null; }
    root.dataset.awake = String(lock !== null);
  };

  let open = null;
  let cameFrom = null;
  const back = by('back');
  const next = by('next');
  // What scrolls to the side can be reached by keys.
  const reach = () => all('.open .table, .open figure').forEach((t) => {
    if (t.scrollWidth > t.clientWidth) { t.tabIndex = 0; } else { t.removeAttribute('tabindex'); }
  });
  const show = (focus) => {
    const wanted = by(decodeURIComponent(location.hash.slice(1)));
    const target = wanted ? wanted.closest('.screen') : null;
    const screen = target || walk[0];
    screens.forEach((s) => s.classList.toggle('open', s === screen));
    open = screen;
    const at = walk.indexOf(screen);
    by('at').textContent = at === -1 ? '' : (at + 1) + '/' + walk.length;
    back.disabled = at === 0 ? cameFrom === null : false;
    next.disabled = at === walk.length - 1 ? true : screen.id === 'stop';
    awake = screen.classList.contains('cut');
    stayAwake();
    reach();
    window.scrollTo(0, 0);
    const title = screen.querySelector('h2');
    if (focus ? title : false) { title.focus({ preventScroll: true }); }
  };
  const go = (screen) => { if (screen) { cameFrom = null; location.hash = screen.id; } };
  const step = (by) => {
    const at = walk.indexOf(open);
    if (by === -1 ? cameFrom : false) { go(cameFrom); return; }
    if (at === -1) { go(open.id === 'stop' ? walk[0] : (by === 1 ? walk[0] : null)); return; }
    go(walk[at + by]);
  };
  back.addEventListener('click', () => step(-1));
  next.addEventListener('click', () => step(1));
  // Whoever looks something up comes back to where they were.
  all('.bar a, header a, .halt a').forEach((a) => a.addEventListener('click', () => {
    if (walk.includes(open)) { cameFrom = a.hash === '#' + open.id ? cameFrom : open; }
  }));
  all('#contents a').forEach((a) => a.addEventListener('click', () => { cameFrom = null; }));

  // A swipe to the side turns the page; not on a table that scrolls, in a field, or zoomed in.
  const SWIPE = 70;
  const EDGE = 24;
  let start = null;
  const zoomed = () => (window.visualViewport ? window.visualViewport.scale > 1.05 : false);
  const scrolls = (element) => {
    const wide = element.closest('.table, figure');
    return wide ? wide.scrollWidth > wide.clientWidth : false;
  };
  document.addEventListener('touchstart', (event) => {
    const touch = event.touches[0];
    const edge = Math.min(touch.clientX, window.innerWidth - touch.clientX);
    const free = [event.touches.length === 1, !zoomed(), edge > EDGE, !event.target.closest('input[type=text]'), !scrolls(event.target)];
    start = free.every(Boolean) ? touch : null;
  }, { passive: true });
  document.addEventListener('touchend', (event) => {
    if (!start) { return; }
    const end = event.changedTouches[0];
    const across = end.clientX - start.clientX;
    const down = Math.abs(end.clientY - start.clientY);
    start = null;
    if (Math.abs(across) > Math.max(SWIPE, 2 * down)) { step(Math.sign(across) === 1 ? -1 : 1); }
  }, { passive: true });

  // A touch on a drawing shows it larger, to be moved to the side; another touch as it was.
  all('figure').forEach((f) => f.addEventListener('click', () => { f.classList.toggle('large'); reach(); }));

  const light = by('light');
  const setLight = (value) => { if (value) { root.dataset.light = value; } };
  const isDark = () => (root.dataset.light ? root.dataset.light === 'dark' : matchMedia('(prefers-color-scheme: dark)').matches);
  light.addEventListener('click', () => {
    setLight(isDark() ? 'bright' : 'dark');
    keep.set('kerfwright light', root.dataset.light);
  });
  by('clear').addEventListener('click', () => {
    if (!window.confirm(document.body.dataset.clear)) { return; }
    ticks.forEach((t) => { t.checked = false; keep.set(plan + t.dataset.key, ''); });
    count();
  });

  setLight(keep.get('kerfwright light'));
  load();
  count();
  if (!keep.set('kerfwright', '1')) { by('forgets').hidden = false; }
  [back, next, light, by('clear')].forEach((b) => { b.hidden = false; });
  root.classList.add('paged');
  document.addEventListener('input', changed);
  window.addEventListener('hashchange', () => show(true));
  window.addEventListener('resize', reach);
  document.addEventListener('visibilitychange', stayAwake);
  show(false);
})();
