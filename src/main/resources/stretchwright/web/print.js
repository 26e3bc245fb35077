// How many sheets are ticked stands on the button; without it the button says what was ticked when the page opened.
"use strict";
(() => {
  const form = document.getElementById("print");
  const press = document.getElementById("press");
  if (!form || !press) return;
  const count = () => {
    const all = Array.from(form.querySelectorAll("input[data-pages]:checked")).reduce((sum, i) => sum + Number(i.dataset.pages), 0);
    press.textContent = all === 0 ? press.dataset.none : all === 1 ? press.dataset.one : press.dataset.many.replace("{0}", all);
    press.disabled = all === 0;
  };
  form.addEventListener("change", count);
  addEventListener("pageshow", count);
})();
