// Chromium's own parser of WebVTT reads every cue of a file, in order.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { files, withBrowser } from "./browser.mjs";

await withBrowser(async (browser) => {
  const page = await browser.newPage();
  for (const file of files) {
    const text = readFileSync(file);
    const source = "data:text/vtt;base64," + text.toString("base64");
    await page.setContent("<video><track default kind='captions'></video>");
    const cues = await page.evaluate(
      (src) =>
        new Promise((resolve, reject) => {
          const track = document.querySelector("track");
          track.addEventListener("error", () => reject(new Error("the track cannot be read")));
          track.addEventListener("load", () =>
            resolve(
              Array.from(track.track.cues, (cue) => ({
                start: cue.startTime,
                end: cue.endTime,
                plain: cue.getCueAsHTML().textContent,
                elements: cue.getCueAsHTML().querySelectorAll("*").length,
              })),
            ),
          );
          track.src = src;
          track.track.mode = "hidden";
        }),
      source,
    );
    const written = text.toString("utf8").match(/^[0-9:.]{12} --> [0-9:.]{12}$/gm) ?? [];
    assert.ok(written.length > 0, file);
    assert.equal(cues.length, written.length, file);
    cues.forEach((cue, i) => {
      assert.ok(cue.end > cue.start, file);
      assert.ok(i === 0 || cue.start >= cues[i - 1].start, file);
      assert.notEqual(cue.plain.trim(), "", file);
      assert.equal(cue.elements, 0, "no text of a cue is markup");
    });
  }
});
