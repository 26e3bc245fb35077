// Liveliness of the lay only: without it every control is a form that works.
"use strict";

(() => {
  const PAUSE = 350; // ms after the last key until what was moved is sent
  const AGAIN = 3000; // ms until the program is asked again after it was away
  const SPEAK = 15000; // ms between two things that are spoken while it looks
  const live = () => document.getElementById("live");
  const form = () => document.getElementById("hand");
  const pieces = id => [...document.querySelectorAll("#drawing a.held-by")].filter(a => a.dataset.id === id);
  const scale = a => Number(a.ownerSVGElement.dataset.scale);

  // --- a piece that is held: moved here at once, told to the server when it rests
  let held = null; // { id, dx, dy } in mm, y to the far end
  let timer = 0;
  let busy = false;

  const shift = () => pieces(held.id).forEach(a => {
    const s = scale(a);
    a.setAttribute("transform", `translate(${held.dx * s} ${-held.dy * s})`);
  });
  const pick = id => {
    if (held && held.id === id) return;
    if (held && (held.dx || held.dy)) send();
    held = { id, dx: 0, dy: 0 };
    document.querySelectorAll("#drawing a.held-by.held").forEach(a => a.classList.remove("held"));
    pieces(id).forEach(a => a.classList.add("held"));
    const which = document.getElementById("which");
    if (which) which.value = id;
  };
  const post = (extra, focus) => {
    clearTimeout(timer);
    const values = {};
    for (const [k, v] of new FormData(form())) (values[k] = values[k] || []).push(v);
    Object.assign(values, extra);
    busy = true;
    return htmx.ajax("POST", form().getAttribute("action"), {
      target: "#live", select: "#live", swap: "outerHTML", source: document.body, values,
    }).then(() => true, () => false).then(there => {
      busy = false;
      lost(!there, "waits");
      if (!there) return false;
      settled();
      const again = pieces(focus).find(a => a.getBoundingClientRect().width > 0);
      if (again) again.focus({ preventScroll: true });
      return true;
    });
  };
  const send = () => {
    const h = held;
    held = null;
    if (!h || busy) { held = h; if (h) timer = setTimeout(send, PAUSE); return; }
    if (!h.dx && !h.dy) return;
    post({ do: "move", piece: h.id, dx: h.dx.toFixed(2), dy: h.dy.toFixed(2) }, h.id).then(there => {
      if (there || held && held.id !== h.id) return;
      // it stays where it was moved to, and is told when somebody answers
      held = { id: h.id, dx: h.dx + (held ? held.dx : 0), dy: h.dy + (held ? held.dy : 0) };
      timer = setTimeout(send, AGAIN);
    });
  };

  const KEYS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
  const WORDS = { r: "turn", R: "turn", p: "pin", P: "pin", Home: "back" };
  document.addEventListener("keydown", e => {
    const a = e.target.closest && e.target.closest("#drawing a.held-by");
    if (!a || e.ctrlKey || e.metaKey || e.altKey) return;
    if (KEYS[e.key]) {
      e.preventDefault();
      pick(a.dataset.id);
      const by = e.shiftKey ? 10 : 1;
      held.dx += KEYS[e.key][0] * by;
      held.dy += KEYS[e.key][1] * by;
      shift();
      clearTimeout(timer);
      timer = setTimeout(send, PAUSE);
    } else if (e.key === "Enter" || e.key === " ") {
      e.preventDefault();
      pick(a.dataset.id);
    } else if (e.key === "Escape") {
      if (held) { held.dx = held.dy = 0; shift(); clearTimeout(timer); }
    } else if (WORDS[e.key] && !busy) {
      e.preventDefault();
      const id = a.dataset.id;
      const pinned = [...form().querySelectorAll("input[name=pinned]")].some(i => i.value === id);
      held = null;
      post({ do: WORDS[e.key] === "pin" && pinned ? "unpin" : WORDS[e.key], piece: id }, id);
    }
  });

  // --- by finger or mouse
  let drag = null;
  document.addEventListener("pointerdown", e => {
    const a = e.target.closest && e.target.closest("#drawing a.held-by");
    if (!a || busy || pointing || e.button > 0) return;
    pick(a.dataset.id);
    const box = a.ownerSVGElement.getBoundingClientRect();
    drag = { a, x: e.clientX, y: e.clientY, px: a.ownerSVGElement.viewBox.baseVal.width / box.width, dx: held.dx, dy: held.dy };
    if (e.pointerType === "mouse") e.preventDefault();
    a.focus({ preventScroll: true });
  });
  document.addEventListener("pointermove", e => {
    if (!drag || !held || (e.pointerType !== "mouse" && !document.querySelector("#drawing a.held"))) return;
    const s = scale(drag.a);
    held.dx = drag.dx + (e.clientX - drag.x) * drag.px / s;
    held.dy = drag.dy - (e.clientY - drag.y) * drag.px / s;
    shift();
  });
  const letGo = () => {
    if (!drag) return;
    drag = null;
    if (held && Math.hypot(held.dx, held.dy) >= 0.5) send();
  };
  document.addEventListener("pointerup", letGo);
  document.addEventListener("pointercancel", () => { drag = null; if (held) { held.dx = held.dy = 0; shift(); } });
  document.addEventListener("click", e => {
    const a = e.target.closest && e.target.closest("#drawing a.held-by");
    if (a) { e.preventDefault(); pick(a.dataset.id); }
  });
  document.addEventListener("change", e => {
    if (e.target.id === "which" && e.target.value) pick(e.target.value);
  });

  // --- flaws and a remnant's outline, pointed at on the cloth
  let pointing = null; // { what, corners }
  const unit = () => ({ mm: 1, cm: 10, in: 25.4, yd: 914.4 }[document.querySelector("[data-draw] label")?.textContent.match(/, (mm|cm|in|yd)/)?.[1]] || 10);
  const told = mm => (Math.round(mm / unit() * 100) / 100).toString();
  const mark = svg => {
    svg.querySelectorAll(".pointed").forEach(p => p.remove());
    const s = Number(svg.dataset.scale), left = Number(svg.dataset.left), foot = Number(svg.dataset.foot), fold = Number(svg.dataset.fold);
    const at = ([x, y]) => `${left + (x - fold) * s} ${foot - y * s}`;
    let c = pointing.corners;
    if (pointing.what === "flaw" && c.length === 2) c = [c[0], [c[1][0], c[0][1]], c[1], [c[0][0], c[1][1]]];
    const path = document.createElementNS("http://www.w3.org/2000/svg", "path");
    path.setAttribute("class", "pointed");
    path.setAttribute("d", c.length === 1 ? `M${at(c[0])}m-5 0h10m-5 -5v10` : "M" + c.map(at).join("L") + "Z");
    svg.append(path);
  };
  const fill = () => {
    const f = document.querySelector(`[data-draw=${pointing.what}]`);
    const c = pointing.corners;
    if (pointing.what === "outline") {
      f.elements.outline.value = c.map(([x, y]) => `${told(x)} = ${told(y)}`).join("\n");
    } else if (c.length === 2) {
      f.elements["from left"].value = told(Math.min(c[0][0], c[1][0]));
      f.elements["from end"].value = told(Math.min(c[0][1], c[1][1]));
      f.elements.wide.value = told(Math.max(1, Math.abs(c[0][0] - c[1][0])));
      f.elements.long.value = told(Math.max(1, Math.abs(c[0][1] - c[1][1])));
    }
  };
  document.addEventListener("click", e => {
    const button = e.target.closest && e.target.closest("[data-point]");
    if (button) {
      pointing = pointing && pointing.what === button.dataset.point ? null : { what: button.dataset.point, corners: [] };
      document.querySelectorAll("#drawing svg").forEach(s => s.classList.toggle("pointing", !!pointing));
      if (pointing) document.getElementById("drawing").scrollIntoView({ block: "nearest" });
      return;
    }
    const svg = pointing && e.target.closest && e.target.closest("#drawing svg");
    if (!svg) return;
    e.preventDefault();
    const box = svg.getBoundingClientRect(), px = svg.viewBox.baseVal.width / box.width;
    const s = Number(svg.dataset.scale);
    const x = ((e.clientX - box.left) * px - Number(svg.dataset.left)) / s + Number(svg.dataset.fold);
    const y = (Number(svg.dataset.foot) - (e.clientY - box.top) * px) / s;
    if (pointing.what === "flaw" && pointing.corners.length === 2) pointing.corners = [];
    pointing.corners.push([Math.max(0, Math.round(x)), Math.max(0, Math.round(y))]);
    mark(svg);
    fill();
  });

  // --- how a search comes on
  let source = null;
  let quiet = 0;
  let spoken = 0;
  let waits = false;
  const speak = (words, now) => {
    const at = document.getElementById("told");
    if (at && (now || Date.now() - spoken > SPEAK)) { spoken = Date.now(); at.textContent = words; }
  };
  const show = () => {
    // what is held or was moved stays on the table
    if (busy || held && (held.dx || held.dy) || live().dataset.touched) { waits = true; return; }
    waits = false;
    const focus = document.activeElement && document.activeElement.dataset ? document.activeElement.dataset.id : null;
    const picked = document.getElementById("which").value;
    const page = live().dataset.page;
    busy = true;
    htmx.ajax("GET", page + (picked ? (page.includes("?") ? "&" : "?") + "piece=" + encodeURIComponent(picked) : ""), {
      target: "#live", select: "#live", swap: "outerHTML", source: document.body,
    }).then(() => true, () => false).then(there => {
      busy = false;
      lost(!there);
      if (!there) { waits = true; return; }
      settled();
      const again = focus && pieces(focus).find(a => a.getBoundingClientRect().width > 0);
      if (again) again.focus({ preventScroll: true });
    });
  };
  let away = false;
  const lost = (now, words = "away") => {
    away = now;
    const at = document.querySelector(".kept[data-waits]");
    if (!at) return;
    if (at.dataset.before === undefined) at.dataset.before = at.textContent;
    at.textContent = now ? at.dataset[words] : at.dataset.before;
    at.classList.toggle("waits", now);
  };
  const sentence = () => document.querySelector(".says h2").textContent + " " + document.querySelector(".says p").textContent;
  const listen = () => {
    if (source || Date.now() < quiet || !live() || !live().dataset.looking || !window.EventSource) return;
    source = new EventSource(live().dataset.make + "/lay/events?cloth=" + live().dataset.cloth);
    let last = null;
    source.addEventListener("lay", e => {
      const now = JSON.parse(e.data);
      const seen = [now.state, now.before, now.mm].join(" ");
      const share = document.getElementById("share");
      if (share && now.of) share.value = now.reached / now.of;
      if (last !== null && last !== seen || waits) show();
      last = seen;
    });
    // over, or too many look on: who still sees a search asks again after a while
    source.addEventListener("over", () => { source.close(); source = null; quiet = Date.now() + AGAIN; setTimeout(listen, AGAIN); show(); });
    // the program is away: the browser asks again by itself, and the page is fetched anew as soon as somebody answers
    source.addEventListener("error", () => {
      lost(true);
      if (source && source.readyState === EventSource.CLOSED) { source = null; setTimeout(listen, AGAIN); }
    });
    source.addEventListener("open", () => { if (away) { lost(false); show(); } });
  };
  const settled = () => {
    document.querySelectorAll(".live-only").forEach(b => { b.hidden = false; });
    const again = document.getElementById("again");
    if (again && window.EventSource) again.hidden = true;
    speak(sentence(), !live().dataset.looking);
    listen();
  };
  // what was pressed and could not be sent is pressed again when somebody may answer
  document.addEventListener("htmx:sendError", e => {
    const event = e.detail.requestConfig && e.detail.requestConfig.triggeringEvent, button = event && event.submitter;
    if (!button) return;
    lost(true, "waits");
    setTimeout(() => { if (button.isConnected) button.click(); }, AGAIN);
  });
  document.addEventListener("htmx:afterOnLoad", () => { if (away) lost(false); });
  document.addEventListener("htmx:afterSettle", () => { if (live() && !busy) settled(); });
  settled();
})();
