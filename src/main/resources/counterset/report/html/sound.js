// Sounds, made here, and the browser's own voice; both are off until somebody chooses them.
function sounds() {
  const LOW = 520;
  const HIGH = 780;
  const NUMBERS = ["", "One", "Two", "Three", "Four", "Five"];
  const sound = document.getElementById("sound");
  const voice = document.getElementById("voice");
  const speech = window.speechSynthesis;
  let audio = null;

  // Browsers let a page make sound only after something was pressed on it.
  function wake() {
    const Audio = window.AudioContext || window.webkitAudioContext;
    if (sound.checked && Audio) {
      audio = audio || new Audio();
      audio.resume();
    }
  }

  function tone(frequency, seconds) {
    if (!sound.checked || !audio) {
      return;
    }
    const begin = audio.currentTime;
    const source = audio.createOscillator();
    const loudness = audio.createGain();
    source.frequency.value = frequency;
    loudness.gain.setValueAtTime(0, begin);
    loudness.gain.linearRampToValueAtTime(0.5, begin + 0.01);
    loudness.gain.setValueAtTime(0.5, begin + seconds - 0.03);
    loudness.gain.linearRampToValueAtTime(0, begin + seconds);
    source.connect(loudness).connect(audio.destination);
    source.start(begin);
    source.stop(begin + seconds);
  }

  function say(text) {
    if (speech) {
      speech.cancel();
      if (voice.checked && text) {
        const words = new SpeechSynthesisUtterance(text);
        words.lang = "en";
        speech.speak(words);
      }
    }
  }

  document.getElementById("voice-choice").hidden = !speech;
  sound.addEventListener("change", () => {
    wake();
    tone(HIGH, 0.3);
  });
  voice.addEventListener("change", () => say(voice.checked ? "Cues are said aloud." : ""));
  return {
    wake,
    say,
    quiet: () => say(""),
    begin: () => tone(HIGH, 0.5),
    count(left) {
      tone(LOW, 0.15);
      if (voice.checked) {
        say(NUMBERS[left]);
      }
    },
  };
}
