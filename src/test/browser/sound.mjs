// Sound and speech are off until chosen; then they count and speak at the right moments. The
// screen is kept awake while the clock runs.
import assert from "node:assert/strict";
import { files, intervals, openAtNoon, withBrowser } from "./browser.mjs";

async function record(page) {
  await page.addInitScript(() => {
    window.tones = [];
    window.spoken = [];
    window.awake = 0;
    const param = () => ({ setValueAtTime() {}, linearRampToValueAtTime() {}, value: 0 });
    window.AudioContext = class {
      currentTime = 0;
      resume() {}
      createOscillator() {
        const source = {
          frequency: param(),
          connect: (to) => to,
          start: () => window.tones.push(source.frequency.value),
          stop() {},
        };
        return source;
      }
      createGain() {
        return { gain: param(), connect: (to) => to };
      }
    };
    Object.defineProperty(window, "speechSynthesis", {
      value: { cancel() {}, speak: (words) => window.spoken.push(words.text) },
    });
    Object.defineProperty(navigator, "wakeLock", {
      value: {
        async request() {
          window.awake++;
          return {
            addEventListener() {},
            async release() {
              window.awake--;
            },
          };
        },
      },
    });
  });
}

await withBrowser(async (browser) => {
  const { page, done } = await openAtNoon(browser, files[0], {}, record);
  const all = await intervals(page);
  const take = (name) => page.evaluate((it) => window[it].splice(0), name);
  const awake = () => page.evaluate(() => window.awake);
  await page.evaluate(() => {
    window.news = [];
    const news = document.getElementById("news");
    new MutationObserver(() => window.news.push(news.textContent)).observe(news, {
      childList: true,
    });
  });
  await page.click("#open-clock");
  await page.click("#start");
  assert.equal(await awake(), 1);
  await page.clock.runFor(all[0].end * 1000 + 100);
  assert.deepEqual(await take("tones"), [], "silent until chosen");
  assert.deepEqual(await take("spoken"), []);

  await page.click(".settings summary");
  await page.check("#sound");
  await page.check("#voice");
  assert.equal((await take("tones")).length, 1, "a sample");
  await take("spoken");
  await take("news");
  await page.clock.runFor((all[1].end - all[1].start) * 1000);
  const tones = await take("tones");
  assert.equal(tones.length, 6, "five to count and one to begin");
  assert.equal(new Set(tones.slice(0, 5)).size, 1);
  assert.notEqual(tones[5], tones[4]);
  assert.deepEqual(await take("spoken"), ["Five", "Four", "Three", "Two", "One", all[2].say]);
  const news = await take("news");
  assert.equal(news.length, 1, "told once an interval: " + news);
  assert.ok(news[0].includes(all[2].now.name));

  await page.click("#start");
  assert.equal(await awake(), 0);
  await page.uncheck("#sound");
  await page.uncheck("#voice");
  await page.click("#start");
  await take("tones");
  await take("spoken");
  await page.clock.runFor(60000);
  assert.deepEqual([...(await take("tones")), ...(await take("spoken"))], []);
  await done();
});
