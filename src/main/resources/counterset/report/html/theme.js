// Light or dark: as the device has it, until somebody chooses.
function theme() {
  const root = document.documentElement;
  const choice = document.getElementById("theme");
  document.getElementById("theme-choice").hidden = false;
  choice.addEventListener("change", () => {
    if (choice.value) {
      root.dataset.theme = choice.value;
    } else {
      delete root.dataset.theme;
    }
  });
}
