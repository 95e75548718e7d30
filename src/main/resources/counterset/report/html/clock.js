// The clock to lead or film by.
function clock() {
  const LAST = 5;
  const LATE = 4;
  const data = JSON.parse(document.getElementById("session-data").textContent);
  const { intervals } = data;
  const at = (id) => document.getElementById(id);
  const open = at("open-clock");
  if (!intervals.length) {
    return;
  }
  const whole = intervals[intervals.length - 1].end;
  const time = timekeeper(whole * 1000);
  const sound = sounds();
  const awake = wakeLock();
  const tracks = trackChoice(data.tracks, () => {
    shown.interval(intervals[index]);
    state();
  });
  const shown = view(data, tracks);
  let index = -1;
  let last = null;
  let timer = 0;

  function draw() {
    clearTimeout(timer);
    const passed = time.passed();
    const now = intervalAt(intervals, passed);
    const interval = intervals[now];
    if (now !== index) {
      change(now, interval);
    }
    const left = interval ? Math.ceil(interval.end - passed / 1000) : 0;
    if (left !== last && time.running() && interval) {
      count(left);
    }
    last = left;
    shown.seconds(left, Math.floor(passed / 1000), passed / (whole * 1000));
    if (time.running()) {
      // A little late rather than a little early: the second must be over.
      timer = setTimeout(draw, 1000 - (passed % 1000) + LATE);
    }
  }

  function change(now, interval) {
    index = now;
    last = null;
    shown.interval(interval);
    if (!interval) {
      finish();
      return;
    }
    shown.tell(shown.words(interval));
    state();
    if (time.running()) {
      sound.begin();
      sound.say(interval.say);
    }
  }

  function count(left) {
    if (left <= LAST && last !== null) {
      sound.count(left);
    }
  }

  function finish() {
    const ran = time.running();
    time.pause();
    awake(false);
    state();
    shown.tell("That is the session. Well done.");
    if (ran) {
      sound.begin();
    }
  }

  const state = () => shown.running(time.running(), time.passed() > 0 && index < intervals.length);

  function startOrPause() {
    sound.wake();
    if (time.running()) {
      time.pause();
      sound.quiet();
      shown.tell("Paused.");
    } else {
      if (index >= intervals.length) {
        time.jump(0);
      }
      time.start();
      draw();
      sound.say(intervals[index].say);
      shown.tell("Started. " + shown.words(intervals[index]));
    }
    awake(time.running());
    state();
    draw();
  }

  function jump(to) {
    time.jump(to);
    draw();
    state();
  }

  const back = () => jump(stepBack(intervals, time.passed()));
  const forward = () => jump(stepForward(intervals, time.passed()));

  function show(on) {
    at("clock").hidden = !on;
    at("page").inert = on;
    document.documentElement.classList.toggle("leading", on);
    if (on) {
      draw();
      shown.fit();
      at("start").focus();
    } else {
      if (time.running()) {
        startOrPause();
      }
      if (document.fullscreenElement) {
        document.exitFullscreen();
      }
      open.focus();
    }
  }

  function key(event) {
    if (at("clock").hidden || event.ctrlKey || event.altKey || event.metaKey) {
      return;
    }
    const settings = document.querySelector(".settings");
    const does = { ArrowLeft: back, ArrowRight: forward }[event.key];
    if (does) {
      event.preventDefault();
      does();
    } else if (event.key === " " && !event.target.closest("button, summary, input")) {
      event.preventDefault();
      startOrPause();
    } else if (event.key === "Escape" && settings.open) {
      settings.open = false;
      settings.querySelector("summary").focus();
    } else if (event.key === "Escape" && !document.fullscreenElement) {
      show(false);
    }
  }

  // After a click the space key is to start and pause again.
  const press = (id, does) =>
    at(id).addEventListener("click", (event) => {
      does();
      if (event.detail > 0) {
        at("start").focus();
      }
    });

  const line = at("strip-picture").cloneNode(true);
  ["id", "role", "aria-label"].forEach((name) => line.removeAttribute(name));
  const marker = document.createElementNS("http://www.w3.org/2000/svg", "line");
  marker.setAttribute("class", "marker");
  marker.setAttribute("y1", "15");
  marker.setAttribute("y2", "51");
  line.append(marker);
  at("line").append(line);
  at("whole").textContent = minutes(whole);
  press("start", startOrPause);
  press("back", back);
  press("forward", forward);
  at("close-clock").addEventListener("click", () => show(false));
  open.addEventListener("click", () => show(true));
  open.hidden = false;
  document.addEventListener("keydown", key);
  document.addEventListener("visibilitychange", draw);
  window.addEventListener("pageshow", draw);
  fillScreen(at("clock"));
  draw();
}
