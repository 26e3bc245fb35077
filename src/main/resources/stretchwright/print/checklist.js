"use strict";
(function () {
    const body = document.body;
    const steps = Array.from(document.querySelectorAll("section"));
    const boxes = steps.map((s) => s.querySelector("input"));
    const where = document.getElementById("where");
    const bar = document.querySelector("progress");
    const back = document.getElementById("back");
    const next = document.getElementById("next");
    const key = body.getAttribute("data-key");
    let at = 0;

    // a browser may forbid to remember anything; the list works all the same
    function kept() {
        try {
            return JSON.parse(localStorage.getItem(key)) || {};
        } catch (e) {
            return {};
        }
    }

    function keep() {
        try {
            localStorage.setItem(key, JSON.stringify({ at: at, done: boxes.map((b) => b.checked) }));
        } catch (e) {
            return;
        }
    }

    // the sentences stand in the page, in its language
    function told(sentence, filled) {
        return filled.reduce((text, value, i) => text.replace("{" + i + "}", value), body.getAttribute(sentence));
    }

    function tell() {
        const done = boxes.filter((b) => b.checked).length;
        bar.value = done;
        where.textContent = done === steps.length
            ? told("data-all", [done])
            : told("data-at", [at + 1, steps.length, done]);
    }

    function show(focus) {
        steps.forEach((s, i) => { s.hidden = i !== at; });
        back.disabled = at === 0;
        next.textContent = body.getAttribute(at === steps.length - 1 ? "data-last" : "data-next");
        tell();
        keep();
        window.scrollTo(0, 0);
        if (focus) {
            steps[at].querySelector("h2").focus({ preventScroll: true });
        }
    }

    function onwards() {
        boxes[at].checked = true;
        at = Math.min(at + 1, steps.length - 1);
        show(true);
    }

    function backwards() {
        at = Math.max(at - 1, 0);
        show(true);
    }

    if (!steps.length) {
        return;
    }
    const before = kept();
    if (Number.isInteger(before.at) && before.at >= 0 && before.at < steps.length) {
        at = before.at;
    }
    if (Array.isArray(before.done)) {
        boxes.forEach((b, i) => { b.checked = before.done[i] === true; });
    }
    boxes.forEach((b) => b.addEventListener("change", () => { tell(); keep(); }));
    back.addEventListener("click", backwards);
    next.addEventListener("click", onwards);
    document.querySelector("main").addEventListener("click", (e) => {
        const own = e.target.closest("label, input, button, a");
        if (!own && String(window.getSelection()) === "") {
            onwards();
        }
    });
    document.addEventListener("keydown", (e) => {
        const own = e.target.closest && e.target.closest("input, button");
        if (e.altKey || e.ctrlKey || e.metaKey || e.repeat) {
            return;
        }
        if (e.key === "ArrowRight" || (e.key === " " && !own)) {
            e.preventDefault();
            onwards();
        } else if (e.key === "ArrowLeft") {
            e.preventDefault();
            backwards();
        }
    });
    body.classList.add("one");
    show(false);
})();
