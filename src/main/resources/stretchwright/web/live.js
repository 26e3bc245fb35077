// Liveliness only: without it every control is a form that works.
"use strict";

// What is moved by finger, mouse or keys: tried while it moves, kept when it is let go.
(() => {
  const PAUSE = 400; // ms after the last key until a move by keys is kept
  let held = null;
  let timer = 0;

  const live = () => document.getElementById("live");
  // one after the other: what follows a change has seen it
  let last = Promise.resolve();
  const send = (path, values, done) => {
    last = last.then(() => live() && htmx.ajax("POST", live().dataset.make + path, {
      target: "#live", select: "#live", swap: "outerHTML", source: document.body,
      values: { ...values, seen: live().dataset.seen },
    })).catch(() => {}).then(done);
  };

  const grip = id => document.getElementById(id);
  const start = g => ({
    id: g.id, key: g.dataset.key, from: Number(g.dataset.mm), now: Number(g.dataset.mm),
    perMm: Number(g.dataset.px) / 1000, usual: Number(g.dataset.usual), way: g.dataset.way,
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
      if (again && held === h) { again.classList.add("held"); if (h.keys) again.focus(); }
      if (h.asked !== null && held === h) { h.asked = null; attempt(h); }
      else if (h.keep) { h.keep = false; keep(h); }
    });
  };
  const keep = h => {
    if (h.busy) { h.keep = true; h.asked = null; return; }
    if (held === h) held = null;
    if (h.now === h.from) { send("/try", value(h)); return; }
    send("/change", value(h), () => { if (h.keys && !held && document.activeElement === document.body && grip(h.id)) grip(h.id).focus(); });
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
  const read = input => {
    if (reading) { reading = input; return; }
    reading = input;
    const asked = input.value;
    htmx.ajax("POST", live().dataset.make + "/try", {
      source: document.body, swap: "none", values: { [input.name]: asked, of: input.name, seen: live().dataset.seen },
      handler: (_, info) => {
        const page = new DOMParser().parseFromString(info.xhr.responseText, "text/html");
        if (input.isConnected && page.getElementById(input.id) && beside(input, page)) redrawn(input, page);
      },
    }).finally(() => {
      const next = reading;
      reading = null;
      if (next.isConnected && (next !== input || next.value !== asked)) read(next);
    });
  };
  document.addEventListener("input", e => {
    const input = field(e);
    if (!input || !live()) return;
    input.closest(".control").classList.toggle("dirty", input.value !== input.defaultValue);
    read(input);
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
