// The sewing: keys, a screen that stays awake, and going on without a connection. Without it every step is a form that works.
"use strict";
(() => {
  const PATIENCE = 5000; // ms until a silent connection counts as none
  const AGAIN = 15000; // ms between attempts to send what waits
  const form = document.getElementById("done");
  const told = form || document.getElementById("plan");
  if (!told) return;
  const kept = told.dataset.kept;
  const KEY = "stretchwright " + kept;
  const status = document.querySelector(".kept");
  const before = status ? status.textContent : "";

  // steps that are done and not yet told to the program, in their order
  const waiting = () => {
    try { return JSON.parse(localStorage.getItem(KEY)) || []; } catch { return []; }
  };
  const wait = list => {
    try { localStorage.setItem(KEY, JSON.stringify(list.slice(-99))); return true; } catch { return false; }
  };
  const tell = words => { if (status) status.textContent = words; };

  const show = () => {
    const list = waiting();
    tell(list.length ? told.dataset.waits : before);
    if (status) status.classList.toggle("waits", list.length > 0);
    const done = new Set(list.map(w => w.stop));
    const all = Array.from(document.querySelectorAll(".stitches [data-stop]"));
    const last = all.reduce((at, s, i) => done.has(s.dataset.stop) ? i : at, -1);
    all.slice(0, last + 1).filter(s => s.classList.contains("todo")).forEach(s => s.classList.replace("todo", "done"));
  };

  const posted = w => fetch(kept + "/" + w.stop + "/done", {
    method: "POST", redirect: "manual", headers: JSON.parse(document.body.getAttribute("hx-headers")), body: new URLSearchParams({ name: w.name }),
    signal: AbortSignal.timeout(PATIENCE),
  });

  // one after the other, so that none is sent twice; one that the program refuses is told and given up
  let sending = null;
  const send = () => sending || (sending = sendAll().finally(() => { sending = null; }));
  const sendAll = async () => {
    let refused = false;
    for (let list = waiting(); list.length; list = waiting()) {
      let answer;
      try { answer = await posted(list[0]); } catch { break; }
      if (answer.status >= 500) break;
      refused = refused || !(answer.ok || answer.type === "opaqueredirect");
      wait(list.slice(1));
    }
    show();
    if (refused) tell(told.dataset.refused);
    return waiting().length === 0;
  };

  if (form && kept) {
    form.addEventListener("submit", e => {
      const step = { stop: form.dataset.stop, name: form.elements.name.value };
      if (!wait([...waiting().filter(w => w.stop !== step.stop), step])) return;
      e.preventDefault();
      send().then(sent => {
        if (sent || (navigator.serviceWorker && navigator.serviceWorker.controller)) location.assign(form.dataset.on);
      });
    });
  }
  if (kept) {
    show();
    send();
    addEventListener("online", send);
    setInterval(() => { if (waiting().length) send(); }, AGAIN);
    if (navigator.serviceWorker) {
      navigator.serviceWorker.register(kept + "/worker.js", { scope: kept }).then(() => navigator.serviceWorker.ready)
        .then(r => r.active && r.active.postMessage(told.dataset.plan)).catch(() => {});
    }
  }

  // the screen stays awake as long as a step is looked at, where the browser can do that
  const awake = () => {
    if (form && navigator.wakeLock && document.visibilityState === "visible") navigator.wakeLock.request("screen").catch(() => {});
  };
  document.addEventListener("visibilitychange", awake);
  awake();

  document.addEventListener("keydown", e => {
    if (!form || e.altKey || e.ctrlKey || e.metaKey || e.shiftKey || e.repeat) return;
    const own = e.target.closest && e.target.closest("a, button, summary, input, select, textarea");
    if (e.key === "ArrowRight" || (e.key === " " && !own)) {
      e.preventDefault();
      form.requestSubmit();
    } else if (e.key === "ArrowLeft" && document.getElementById("back")) {
      e.preventDefault();
      document.getElementById("back").click();
    }
  });
})();
