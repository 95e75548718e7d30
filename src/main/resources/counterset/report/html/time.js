// The time of a session in milliseconds: computed from the moment it was started, never counted, so
// that a late or a lost timer changes nothing.
function timekeeper(end) {
  const SLEPT = 2000;
  let before = 0;
  let since = null;

  const clocks = () => ({ steady: performance.now(), wall: Date.now() });

  function passed() {
    if (!since) {
      return before;
    }
    const now = clocks();
    const steady = now.steady - since.steady;
    const wall = now.wall - since.wall;
    // The steady clock may stand still while a device sleeps; the session goes on.
    return Math.min(end, before + (wall - steady > SLEPT ? wall : steady));
  }

  return {
    passed,
    running: () => since !== null,
    start() {
      since = since || clocks();
    },
    pause() {
      before = passed();
      since = null;
    },
    jump(to) {
      before = Math.max(0, Math.min(end, to));
      since = since && clocks();
    },
  };
}

// Which interval it is after so many milliseconds; its number is that of all intervals at the end.
function intervalAt(intervals, passed) {
  const index = intervals.findIndex((interval) => interval.end * 1000 > passed);
  return index < 0 ? intervals.length : index;
}

// Where one step back leads: to the beginning of the interval, or of the one before if it has just
// begun.
function stepBack(intervals, passed) {
  const JUST_BEGUN = 2000;
  const index = intervalAt(intervals, passed);
  const begun = index < intervals.length && passed - intervals[index].start * 1000 > JUST_BEGUN;
  const target = intervals[begun ? index : Math.max(0, index - 1)];
  return target ? target.start * 1000 : 0;
}

// Where one step forward leads.
function stepForward(intervals, passed) {
  const index = intervalAt(intervals, passed);
  return index < intervals.length ? intervals[index].end * 1000 : passed;
}

// 0:00 as the run sheet writes it.
function minutes(seconds) {
  return Math.floor(seconds / 60) + ":" + String(seconds % 60).padStart(2, "0");
}
