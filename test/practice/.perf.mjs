import { bundledReader, practiceLists } from './predict.mjs';
const { readList } = await bundledReader();
const all = practiceLists()
  .filter((t) => !['006', '015', '016'].includes(t.id))
  .map((t) => t.text)
  .join('\n')
  .split('\n')
  .slice(0, 1900);
const lines = [];
while (lines.length < 5000) lines.push(...all);
const text = lines.slice(0, 5000).join('\n');
const small = lines.slice(0, 200).join('\n');
for (let i = 0; i < 6; i++) {
  let a = performance.now();
  readList(text);
  let b = performance.now();
  for (let k = 0; k < 5; k++) readList(small);
  let c = performance.now();
  console.log((b - a).toFixed(1), ((c - b) / 5).toFixed(2), text.length);
}
