// Comfort only; the page works without it. Names the chosen unit beside each field, and says that the work has begun.
"use strict";
const unit = document.getElementById("unit");
if (unit) {
  const follow = () =>
    document.querySelectorAll(".own-unit").forEach(u => { u.textContent = unit.value; });
  unit.addEventListener("change", follow);
  follow();
  const button = document.querySelector("button.make");
  const words = button.textContent;
  document.querySelector("form").addEventListener("submit", () => { button.textContent = words + " ..."; });
  window.addEventListener("pageshow", () => { button.textContent = words; follow(); });
}
