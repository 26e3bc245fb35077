// Liveliness only: without it every control is a form that works.
"use strict";

// What is pressed or moved is sent one after the other, in its order; what cannot be sent waits and is told.
// What is moved by finger, mouse or keys is tried while it moves, and kept when it is let go.
(() => {
  const PAUSE = 400; // ms after the last key until a move by keys is kept
  const AGAIN = 5000; // ms between attempts to send what waits
  const SILENT = 5000; // ms until a connection that says nothing counts as none
  let held = null;
  let timer = 0;

  const live = () => document.getElementById("live");

  // --- one request is under way at a time
  const wishes = []; // asked for and not answered yet
  let under = false;
  let waits = false;
  let again = 0;

  const tell = lost => {
    waits = lost;
    const at = document.querySelector(".kept[data-waits]");
    if (!at) return;
    if (at.dataset.before === undefined) at.dataset.before = at.textContent;
    const words = lost ? at.dataset.waits : at.dataset.before;
    if (at.textContent !== words) at.textContent = words;
    at.classList.toggle("waits", lost);
  };
  const post = (path, values) => {
    under = true;
    const silent = setTimeout(() => tell(true), SILENT);
    return htmx.ajax("POST", path, {
      target: "#live", select: "#live", swap: "outerHTML", source: document.body,
      values: { ...values, seen: live().dataset.seen },
    }).then(() => true, () => false).then(there => {
      clearTimeout(silent);
      under = false;
      tell(!there);
      return there;
    });
  };
  const buttons = () => live() ? [...live().querySelectorAll("form[hx-post] button")] : [];
  const like = b => buttons().find(x => b.id ? x.id === b.id : x.name === b.name && x.textContent === b.words);
  const read = button => {
    const values = {};
    for (const [k, v] of new FormData(button.form, button)) if (k !== "seal" && k !== "seen") values[k] = v;
    return { path: button.form.getAttribute("action"), values };
  };
  const next = () => {
    if (under || !live()) return;
    if (!wishes.length) { if (held && held.asked !== null) attempt(held); return; }
    const wish = wishes[0];
    if (wish.late && wish.button) { // pressed before the page was drawn anew: what its button says now
      const now = like(wish.button);
      if (!now) { wishes.shift(); next(); return; }
      Object.assign(wish, read(now));
    }
    post(wish.path, wish.values).then(there => {
      clearTimeout(again);
      if (!there) { again = setTimeout(next, AGAIN); return; }
      wishes.shift();
      wishes.forEach(w => { w.late = true; });
      if (wish.done) wish.done();
      next();
    });
  };
  const wish = w => {
    const first = wishes[0];
    // what waits for one connection is one change, so that whoever was first elsewhere is told of all of it
    if (waits && !under && first && first.path === w.path && !first.values.do && !w.values.do && w.path.endsWith("/change")) {
      Object.assign(first.values, w.values);
      first.button = null;
    } else wishes.push(w);
    next();
  };
  addEventListener("online", next);
  addEventListener("beforeunload", e => { if (waits && wishes.length) e.preventDefault(); });

  document.addEventListener("submit", e => {
    const form = e.target, button = e.submitter;
    if (!window.htmx || !button || !live() || !live().dataset.queued || !live().contains(form) || !form.hasAttribute("hx-post")) return;
    e.preventDefault();
    e.stopImmediatePropagation();
    if (held && held.keys) { clearTimeout(timer); keep(held); }
    const asked = { id: button.id, name: button.name, words: button.textContent, value: button.value };
    wish({
      ...read(button), button: asked, late: under,
      done: () => {
        if (document.activeElement !== document.body) return;
        const same = like(asked) || buttons().find(b => asked.name && b.name === asked.name && b.value === asked.value);
        if (same) same.focus({ preventScroll: true });
      },
    });
  }, true);

  // --- a line that is held
  const grip = id => document.getElementById(id);
  const start = g => ({
    id: g.id, key: g.dataset.key, from: Number(g.dataset.mm), now: Number(g.dataset.mm),
    perMm: Number(g.dataset.px) / 1000, usual: Number(g.dataset.usual), way: g.dataset.way,
    least: Number(g.getAttribute("aria-valuemin")), most: Number(g.getAttribute("aria-valuemax")),
    asked: null,
  });
  const within = (h, mm) => Math.min(h.most, Math.max(h.least, Math.round(mm)));
  const value = h => ({ [h.key]: h.now + " mm" });
  // while something is tried only the drawing that is looked at is drawn
  const small = matchMedia("(max-width: 760px)");
  const sheet = () => ({ sheet: small.matches ? "narrow" : "wide" });
  small.addEventListener("change", () => {
    const drawing = document.getElementById("drawing");
    if (drawing && !drawing.querySelector(small.matches ? "svg.narrow" : "svg.wide")) location.reload();
  });

  // the newest place is the one that is tried next
  const attempt = h => {
    if (under || wishes.length) { h.asked = h.now; return; }
    h.asked = null;
    post(live().dataset.make + "/try", { ...value(h), ...sheet() }).then(there => {
      const same = grip(h.id);
      if (same && held === h) { same.classList.add("held"); if (h.keys) same.focus(); }
      if (there || wishes.length) next();
    });
  };
  const keep = h => {
    if (held === h) held = null;
    const path = live().dataset.make + (h.now === h.from ? "/try" : "/change");
    wish({ path, values: value(h), done: () => { if (h.keys && !held && grip(h.id) && document.activeElement === document.body) grip(h.id).focus(); } });
  };

  document.addEventListener("pointerdown", e => {
    const g = e.target.closest && e.target.closest(".grip");
    if (!g || !live()) return;
    e.preventDefault();
    g.focus();
    if (held && held.keys && held.now !== held.from) { clearTimeout(timer); keep(held); }
    held = Object.assign(start(g), { x: e.clientX, y: e.clientY, ratio: g.ownerSVGElement.viewBox.baseVal.width / g.ownerSVGElement.getBoundingClientRect().width });
    g.classList.add("held");
  });
  document.addEventListener("pointermove", e => {
    if (!held || held.keys) return;
    e.preventDefault();
    const moved = { UP: held.y - e.clientY, DOWN: e.clientY - held.y, OUT: e.clientX - held.x }[held.way];
    const now = within(held, held.from + moved * held.ratio / held.perMm);
    if (now !== held.now) { held.now = now; attempt(held); }
  }, { passive: false });
  // a page that scrolls under a finger takes the slab away from it
  document.addEventListener("touchstart", e => { if (e.target.closest && e.target.closest(".grip")) e.preventDefault(); }, { passive: false });
  const letGo = () => { if (held && !held.keys) keep(held); };
  document.addEventListener("pointerup", letGo);
  document.addEventListener("pointercancel", letGo);

  const STEPS = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 };
  document.addEventListener("keydown", e => {
    const g = e.target.closest && e.target.closest(".grip");
    if (!g) return;
    if (!held || !held.keys || held.id !== g.id) {
      if (held && held.keys && held.now !== held.from) { clearTimeout(timer); keep(held); }
      held = Object.assign(start(g), { keys: true });
    }
    const h = held;
    if (e.key === "Escape" || e.key === "Home") h.now = e.key === "Home" ? h.usual : h.from;
    else if (STEPS[e.key]) {
      const by = STEPS[e.key] * (e.shiftKey ? 10 : 1);
      const flip = h.way === "DOWN" && e.key.match(/Up|Down/) ? -1 : 1;
      h.now = within(h, h.now + flip * by);
    } else return;
    e.preventDefault();
    attempt(h);
    clearTimeout(timer);
    timer = setTimeout(() => { if (held === h) keep(h); }, PAUSE);
  });

  // what is typed: drawn at once, kept by Enter; what makes no sense leaves the drawing and says so beside it
  const field = e => e.target.closest && e.target.closest(".typing input[type=text]");
  const beside = (input, page) => {
    const id = input.id.replace(/typed$/, "wrong");
    const own = page.getElementById(id);
    const others = page.querySelector(".wrong");
    const words = own && own.textContent.trim() || others && others.textContent.trim() || "";
    document.getElementById(id).textContent = words;
    input.toggleAttribute("aria-invalid", words !== "");
    return words === "";
  };
  const redrawn = (input, page) => {
    const now = input.id.replace(/typed$/, "now");
    document.getElementById(now).textContent = page.getElementById(now).textContent;
    for (const part of ["#drawing", "#live > .says"]) {
      document.querySelector(part).replaceWith(document.importNode(page.querySelector(part), true));
      htmx.process(document.querySelector(part));
    }
  };
  let reading = null;
  const sketch = input => {
    if (reading) { reading = input; return; }
    reading = input;
    const asked = input.value;
    htmx.ajax("POST", live().dataset.make + "/try", {
      source: document.body, swap: "none", values: { [input.name]: asked, of: input.name, seen: live().dataset.seen, ...sheet() },
      handler: (_, info) => {
        const page = new DOMParser().parseFromString(info.xhr.responseText, "text/html");
        if (input.isConnected && page.getElementById(input.id) && beside(input, page)) redrawn(input, page);
      },
    }).finally(() => {
      const next = reading;
      reading = null;
      if (next.isConnected && (next !== input || next.value !== asked)) sketch(next);
    });
  };
  document.addEventListener("input", e => {
    const input = field(e);
    if (!input || !live()) return;
    input.closest(".control").classList.toggle("dirty", input.value !== input.defaultValue);
    sketch(input);
  });
  document.addEventListener("keydown", e => {
    const input = field(e);
    if (!input || e.key !== "Escape" || input.value === input.defaultValue) return;
    input.value = input.defaultValue;
    input.dispatchEvent(new Event("input", { bubbles: true }));
  });

  // what was unfolded stays so when the page is drawn anew
  let unfolded = [];
  document.addEventListener("htmx:beforeSwap", () => { unfolded = [...document.querySelectorAll("#live details[open][id]")].map(d => d.id); });
  document.addEventListener("htmx:afterSwap", () => unfolded.forEach(id => { const d = document.getElementById(id); if (d) d.open = true; }));

  // undo as everywhere
  document.addEventListener("keydown", e => {
    if (!(e.ctrlKey || e.metaKey) || e.altKey || e.key.toLowerCase() !== "z" || /INPUT|TEXTAREA|SELECT/.test(e.target.tagName)) return;
    const press = document.getElementById(e.shiftKey ? "redo" : "undo");
    if (press) { e.preventDefault(); press.click(); }
  });

  // a change that was refused, or came second, comes with its page: show it
  document.addEventListener("htmx:beforeSwap", e => {
    if (e.detail.xhr.status === 422 || e.detail.xhr.status === 409) { e.detail.shouldSwap = true; e.detail.isError = false; }
  });
})();
