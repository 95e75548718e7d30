// For which tracks modifications are shown: all of them, until somebody chooses.
function trackChoice(names, changed) {
  const field = document.getElementById("tracks");
  const boxes = names.map((name) => {
    const box = document.createElement("input");
    box.type = "checkbox";
    box.checked = true;
    box.addEventListener("change", changed);
    const label = document.createElement("label");
    label.className = "choice";
    label.append(box, " " + name);
    field.append(label);
    return box;
  });
  field.hidden = !names.length;
  return { chosen: (track) => boxes[track].checked };
}
