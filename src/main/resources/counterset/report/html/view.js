// What the clock shows. All texts are set as text, never as markup.
function view(data, tracks) {
  const LONG = 100;
  const LAST = 5;
  const clock = document.getElementById("clock");
  const at = (id) => document.getElementById(id);
  const less = window.matchMedia("(prefers-reduced-motion: reduce)");
  const pictures = { still: new Map(), moving: new Map() };
  for (const template of document.querySelectorAll("template")) {
    for (const kind of ["still", "moving"]) {
      if (template.dataset[kind] && template.content.querySelector("svg")) {
        pictures[kind].set(template.dataset[kind], template.content);
      }
    }
  }

  function text(id, words) {
    at(id).textContent = words;
    at(id).hidden = !words;
  }

  function element(name, words, kind) {
    const made = document.createElement(name);
    made.textContent = words;
    if (kind) {
      made.className = kind;
    }
    return made;
  }

  // For the chosen tracks, a line each; of several moves, which are the sides of one.
  function modifications(moves) {
    return data.tracks.flatMap((name, track) => {
      const others = moves.flatMap((it) => it.instead).filter((it) => it.track === track);
      if (!others.length || !tracks.chosen(track)) {
        return [];
      }
      const line = element("li", "", "modification");
      line.append(element("strong", name + ": "), titleOf(others));
      return [line];
    });
  }

  function next(moves) {
    const [move] = moves;
    const line = document.createElement("li");
    const picture = pictures.still.get(move.id);
    if (picture) {
      line.append(picture.cloneNode(true));
    }
    line.append(element("strong", (move.place ? move.place + " " : "") + titleOf(moves)));
    if (move.with) {
      line.append(element("span", move.with, "with"));
    }
    const instead = modifications(moves);
    if (instead.length) {
      const list = element("ul", "", "instead");
      list.append(...instead);
      line.append(list);
    }
    return line;
  }

  function picture(move) {
    const shown =
      move &&
      ((!less.matches && pictures.moving.get(move.id)) || pictures.still.get(move.id));
    at("moving").replaceChildren(...(shown ? [shown.cloneNode(true)] : []));
    clock.classList.toggle("pictured", Boolean(shown));
  }

  // On a small screen ornaments go first, then size, until all of what comes next is in sight.
  function fit() {
    const STEPS = ["tight-1", "tight-2", "tight-3"];
    const coming = at("coming");
    clock.classList.remove(...STEPS);
    for (const step of STEPS) {
      if (coming.scrollHeight <= coming.clientHeight) {
        break;
      }
      clock.classList.add(step);
    }
  }
  window.addEventListener("resize", fit);

  return {
    fit,

    // An interval has begun; none at the end.
    interval(interval) {
      clock.dataset.kind = interval ? interval.kind : "end";
      const move = interval && interval.now;
      text("kind", interval ? interval.word : "End");
      text("place", interval ? interval.place : "");
      text("name", interval ? (move ? titleOf([move]) : "") : "That is the session. Well done.");
      text("with", move ? move.with : "");
      text("cue", (interval && interval.cue) || "");
      at("instead").replaceChildren(...(move ? modifications([move]) : []));
      picture(move);
      text("then", interval ? interval.then : "");
      at("next").replaceChildren(...(interval ? grouped(interval.next).map(next) : []));
      at("coming").hidden = !interval || !interval.next.length;
      text("coming-word", interval && interval.then ? "next" : "Next");
      text("tasks", interval ? interval.tasks : "");
      fit();
    },

    // The seconds left of an interval, and how far the session is.
    seconds(left, passed, share) {
      at("seconds").textContent = left < LONG ? left : minutes(left);
      at("seconds").classList.toggle("long", left >= LONG);
      clock.classList.toggle("last", left > 0 && left <= LAST);
      at("passed").textContent = minutes(passed);
      document.querySelectorAll("#line .marker").forEach((marker) => {
        marker.setAttribute("x1", share * 100 + "%");
        marker.setAttribute("x2", share * 100 + "%");
      });
    },

    running(runs, begun) {
      at("start").textContent = runs ? "Pause" : "Start";
      text("state", runs || !begun ? "" : "paused");
      for (const svg of at("moving").querySelectorAll("svg")) {
        (runs ? svg.unpauseAnimations : svg.pauseAnimations).call(svg);
      }
    },

    // What assistive technology tells: at each change, never each second.
    tell(words) {
      at("news").textContent = words;
    },

    words(interval) {
      const move = interval.now;
      const length = interval.end - interval.start + " seconds.";
      const what = [interval.word, interval.place].filter(Boolean).join(" ");
      const instead = move ? [...modifications([move])].map((line) => line.textContent + ".") : [];
      const then = grouped(interval.next).map(titleOf).join(", then ");
      return [
        what + ": " + (move ? titleOf([move]) + ", " : "") + length,
        ...instead,
        interval.tasks,
        then ? "Next: " + then + "." : "",
      ]
        .filter(Boolean)
        .join(" ");
    },
  };
}
