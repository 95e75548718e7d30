// The screen stays on while the clock runs, where the browser can see to it.
function wakeLock() {
  let lock = null;
  let wanted = false;
  async function ask() {
    try {
      if (wanted && !lock && navigator.wakeLock && !document.hidden) {
        lock = await navigator.wakeLock.request("screen");
        lock.addEventListener("release", () => {
          lock = null;
        });
        if (!wanted) {
          await lock.release();
        }
      }
    } catch {
      // Refused, as with a low battery; the clock goes on without.
    }
  }
  document.addEventListener("visibilitychange", ask);
  return (on) => {
    wanted = on;
    if (on) {
      ask();
    } else if (lock) {
      lock.release();
    }
  };
}

// A button that makes the clock fill the screen, where the browser lets it.
function fillScreen(clock) {
  const button = document.getElementById("fill");
  button.hidden = !clock.requestFullscreen;
  button.addEventListener("click", () => {
    if (document.fullscreenElement) {
      document.exitFullscreen();
    } else {
      clock.requestFullscreen().catch(() => {});
    }
  });
  document.addEventListener("fullscreenchange", () => {
    button.textContent = document.fullscreenElement ? "Leave full screen" : "Fill the screen";
  });
}
