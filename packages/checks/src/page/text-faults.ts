import type { Page } from 'playwright-core';

/**
 * What is wrong with the text of a page as it is laid out now: texts that overlap, texts cut off by
 * their box or the window, and texts too small to read.
 *
 * @param page - an open page
 * @returns one sentence a fault; empty where all is well
 */
export async function textFaults(page: Page): Promise<readonly string[]> {
  return await page.evaluate<string[]>(script);
}

/** Text smaller than this is not read on paper or on a phone [px]. */
const leastSize = 9;

/**
 * Runs in the page, and so is written in its language. A line of text counts with the middle of its
 * height: boxes of lines are higher than letters, and may touch.
 */
const script = `(() => {
  const faults = [];
  const lines = [];
  const short = (text) => JSON.stringify(text.trim().replace(/\\s+/g, ' ').slice(0, 50));
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const holder = node.parentElement;
    if (node.data.trim() === '' || !holder.checkVisibility({ visibilityProperty: true })) continue;
    if (holder.closest('title, desc, style')) continue;
    const svg = holder.closest('svg');
    const scroller = holder.closest('.scroll');
    const frame = scroller ? scroller.getBoundingClientRect() : undefined;
    const range = document.createRange();
    range.selectNodeContents(node);
    const rects = svg ? [holder.getBoundingClientRect()] : [...range.getClientRects()];
    const scale = svg ? svg.getBoundingClientRect().width / svg.viewBox.baseVal.width : 1;
    const size = Number.parseFloat(getComputedStyle(holder).fontSize) * scale;
    if (size < ${leastSize}) faults.push('too small, ' + size.toFixed(1) + ' px: ' + short(node.data));
    for (const rect of rects) {
      if (rect.width < 1) continue;
      let { left, right } = rect;
      if (frame) {
        left = Math.max(left, frame.left);
        right = Math.min(right, frame.right);
        if (right - left < 1) continue;
      }
      const trim = rect.height * 0.22;
      lines.push({ node, svg, left, right, top: rect.top + trim, bottom: rect.bottom - trim });
      if (!frame && (rect.right > innerWidth + 1 || rect.left < -1)) {
        faults.push('outside the window: ' + short(node.data));
      }
      if (svg) {
        const box = svg.getBoundingClientRect();
        if (rect.left < box.left - 1.5 || rect.right > box.right + 1.5 || rect.top < box.top - 3 || rect.bottom > box.bottom + 5) {
          faults.push('outside its drawing: ' + short(node.data));
        }
      }
    }
  }
  lines.sort((a, b) => a.top - b.top);
  lines.forEach((line, index) => {
    for (let next = index + 1; next < lines.length && lines[next].top < line.bottom - 1; next += 1) {
      const other = lines[next];
      if (other.node === line.node) continue;
      const across = Math.min(line.right, other.right) - Math.max(line.left, other.left);
      if (across > 2) faults.push('overlap: ' + short(line.node.data) + ' and ' + short(other.node.data));
    }
  });
  for (const element of document.querySelectorAll('body, body *')) {
    const { overflowX, overflowY } = getComputedStyle(element);
    const scrolls = element.matches('.scroll');
    if (element.closest('svg') || (overflowX === 'visible' && overflowY === 'visible')) continue;
    if (element.scrollHeight > element.clientHeight + 1 && overflowY !== 'visible' && element.clientHeight > 0) {
      faults.push('cut off below: ' + short(element.textContent));
    }
    if (!scrolls && element.scrollWidth > element.clientWidth + 1) {
      faults.push('cut off on the right: ' + short(element.textContent));
    }
  }
  if (document.documentElement.scrollWidth > innerWidth) faults.push('the page is wider than the window');
  return [...new Set(faults)];
})()`;
