import { writeFileSync, mkdirSync } from 'node:fs';
import { test } from 'vitest';
import { Resvg } from '@resvg/resvg-js';
import { makeFiles } from '/work/main/src/pipeline.ts';
import { checkFiles } from '/work/main/src/check/index.ts';
const name = process.env.JOB ?? 'a';
const JOBS: Record<string,string[]> = {
 a: ['units: in','overall: { across: 72, along: 96 }','field: { motif: diamond, pitch: { across: 12 } }','border: none',"medallion: { motif: compass-rose, repeats: { across: 4, along: 4 } }"],
 b: ['units: in','overall: { across: 72, along: 96 }','field: { motif: diamond, pitch: { across: 24 } }','border: none'],
 c: ['units: in','overall: { across: 96, along: 120 }','field: { motif: diamond, pitch: { across: 12 } }','border: none','lettering: [{ text: "IC", cap height: 40, place: centre }]'],
 d: ['units: in','overall: { across: 96, along: 120 }','field: { motif: diamond, pitch: { across: 12 } }','border: { motif: leaf-vine, width: 10 }'],
};
test('try', async () => {
  const t=Date.now();
  const job = ['evenfield: 1','title: Try','surface: floor-cloth',...JOBS[name]!].join('\n')+'\n';
  const made = await makeFiles(job, 'try.job.yaml', 1);
  console.log(Date.now()-t,'ms');
  if (!made.ok) { console.log(JSON.stringify(made.issues.map(({code,says,hint}:any)=>({code,says,hint})),null,1)); return; }
  const dir=`/tmp/split/${name}`; mkdirSync(dir,{recursive:true});
  for (const [file, content] of made.value.files) {
    writeFileSync(`${dir}/${file}`, content);
    if (/^(stencil.*)\.svg$/.test(file)) { const png=new Resvg((content as string).replace(/stroke-width="0.2"/g,'stroke-width="1.5"'),{background:'white',fitTo:{mode:'width',value:700}}).render().asPng(); writeFileSync(`${dir}/${file}.png`,png);
    console.log(file, /<title>(.*?)<\/title>/.exec(content as string)?.[1], /<desc>(.*?)<\/desc>/.exec(content as string)?.[1]?.slice(0,150)); }
  }
  const t2=Date.now();
  const { claims } = await checkFiles(made.value.files);
  console.log('check', Date.now()-t2, JSON.stringify(claims.filter(c=>!c.holds),null,1), claims.length);
  console.log(JSON.stringify(claims.filter(c=>/match key|split|part of|lines of its part/.test(c.claim)),null,1));
}, 300000);
