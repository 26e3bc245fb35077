// Liveliness only: without it every control is a form that works.
"use strict";

// What is moved by finger, mouse or keys: tried while it moves, kept when it is let go.
(() => {
  const PAUSE = 400; // ms after the last key until a move by keys is kept
  let held = null;
  let timer = 0;

  const live = () => document.getElementById("live");
  const send = (path, values, done) => htmx.ajax("POST", live().dataset.make + path, {
    target: "#live", select: "#live", swap: "outerHTML", source: document.body,
    values: { ...values, seen: live().dataset.seen },
  }).then(done);

  const grip = id => document.getElementById(id);
  const start = g => ({
    id: g.id, key: g.dataset.key, from: Number(g.dataset.mm), now: Number(g.dataset.mm),
    perMm: Number(g.dataset.px) / 1000, up: g.dataset.up === "true",
    least: Number(g.getAttribute("aria-valuemin")), most: Number(g.getAttribute("aria-valuemax")),
    busy: false, asked: null,
  });
  const within = (h, mm) => Math.min(h.most, Math.max(h.least, Math.round(mm)));
  const value = h => ({ [h.key]: h.now + " mm" });

  // one request is under way at a time; the newest wish is the next one
  const attempt = h => {
    if (h.busy) { h.asked = h.now; return; }
    h.busy = true;
    send("/try", value(h), () => {
      h.busy = false;
      const again = grip(h.id);
      if (again) { again.classList.add("held"); if (h.keys) again.focus(); }
      if (h.asked !== null && held === h) { h.asked = null; attempt(h); }
      else if (h.keep) { h.keep = false; keep(h); }
    });
  };
  const keep = h => {
    if (h.busy) { h.keep = true; h.asked = null; return; }
    held = null;
    if (h.now === h.from) { send("/try", value(h)); return; }
    send("/change", value(h), () => { if (h.keys && grip(h.id)) grip(h.id).focus(); });
  };

  document.addEventListener("pointerdown", e => {
    const g = e.target.closest && e.target.closest(".grip");
    if (!g || !live()) return;
    e.preventDefault();
    g.focus();
    held = Object.assign(start(g), { y: e.clientY, ratio: g.ownerSVGElement.viewBox.baseVal.width / g.ownerSVGElement.getBoundingClientRect().width });
    g.classList.add("held");
  });
  document.addEventListener("pointermove", e => {
    if (!held || held.keys) return;
    e.preventDefault();
    const mm = (e.clientY - held.y) * held.ratio / held.perMm;
    const now = within(held, held.from + (held.up ? -mm : mm));
    if (now !== held.now) { held.now = now; attempt(held); }
  }, { passive: false });
  const letGo = () => { if (held && !held.keys) keep(held); };
  document.addEventListener("pointerup", letGo);
  document.addEventListener("pointercancel", letGo);

  const STEPS = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 };
  document.addEventListener("keydown", e => {
    const g = e.target.closest && e.target.closest(".grip");
    if (!g) return;
    if (!held || !held.keys || held.id !== g.id) held = Object.assign(start(g), { keys: true });
    const h = held;
    if (e.key === "Escape" || e.key === "Home") h.now = e.key === "Home" ? 0 : h.from;
    else if (STEPS[e.key]) {
      const by = STEPS[e.key] * (e.shiftKey ? 10 : 1);
      const flip = !h.up && e.key.match(/Up|Down/) ? -1 : 1;
      h.now = within(h, h.now + flip * by);
    } else return;
    e.preventDefault();
    attempt(h);
    clearTimeout(timer);
    timer = setTimeout(() => { if (held === h) keep(h); }, PAUSE);
  });

  // undo as everywhere
  document.addEventListener("keydown", e => {
    if (!(e.ctrlKey || e.metaKey) || e.altKey || e.key.toLowerCase() !== "z" || /INPUT|TEXTAREA|SELECT/.test(e.target.tagName)) return;
    const press = document.getElementById(e.shiftKey ? "redo" : "undo");
    if (press) { e.preventDefault(); press.click(); }
  });

  // a refused change comes with its page: show it
  document.addEventListener("htmx:beforeSwap", e => {
    if (e.detail.xhr.status === 422) { e.detail.shouldSwap = true; e.detail.isError = false; }
  });
})();
