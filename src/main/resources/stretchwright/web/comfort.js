// Comfort only; the page works without it. Greys out the boot where there is none, names the chosen unit, and says
// that the work has begun.
"use strict";
const boot = document.getElementById("boot");
if (boot) {
  const rest = [...document.querySelectorAll("[name^='boot.']")];
  const follow = () => rest.forEach(f => { f.disabled = !boot.checked; });
  boot.addEventListener("change", follow);
  follow();
  const unit = document.getElementById("unit");
  unit.addEventListener("change", () =>
    document.querySelectorAll(".own-unit").forEach(u => { u.textContent = unit.value; }));
  document.querySelector("form").addEventListener("submit", () =>
    { document.querySelector("button").textContent = "Making it ..."; });
  window.addEventListener("pageshow", () =>
    { document.querySelector("button").textContent = "Make it"; follow(); });
}
