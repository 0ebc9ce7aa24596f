import { readHouse } from '@evendraft/house/read';
import { compileHouse } from '@evendraft/house';
import { pressureRangeStudy, worstCaseStudy } from '@evendraft/studies';
import fs from 'node:fs';
for (const f of fs.readdirSync('packages/house/fixtures/good').map(x=>'packages/house/fixtures/good/'+x).concat(fs.readdirSync('examples').filter(x=>x.endsWith('.yaml')).map(x=>'examples/'+x))) {
  try {
  const r = readHouse(fs.readFileSync(f,'utf8'), {file: f} as any);
  if (!r.ok) { console.log(f, 'bad'); continue; }
  const c = compileHouse(r.house); if (!c.ok) continue;
  const t=Date.now();
  const p = await pressureRangeStudy(c.compiled);
  console.log(f, p.coverage, p.solves, Date.now()-t,'ms', c.compiled.junctions?.length);
  } catch (e) { console.log(f, String(e).slice(0,200)); }
}
