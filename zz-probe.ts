import { ask } from './src/ask/ask.ts';
import { knowledge } from './src/rules/knowledge.ts';
import { readFileSync } from 'node:fs';
const lines = readFileSync('tests/corpus/limits.jsonl','utf8').split('\n').filter(Boolean).map((l)=>JSON.parse(l));
const figure = (n:number,u:string)=> u==='1'?String(n):`${n} ${u==='degF'?'degrees F':u==='yd2'?'sq yd':u==='gal/yd2'?'gal/sy':u}`;
const words=(facts:any)=>Object.entries(facts).map(([id,f]:any)=> typeof f==='string'?(()=>{const c=knowledge.choices.get(id)!;return `${c.title} ${c.options.find((o:any)=>o.id===f)!.title}`})():`${knowledge.quantities.get(id)!.title} ${figure(f[0],f[1])}`).join(', ');
const frag=(t:string|undefined)=>(t??'').split(/\{[^}]*\}/).map((s)=>s.trim()).sort((a,b)=>b.length-a.length)[0]!;
const seen=new Set();
for (const line of lines){ const {limit,ask:q}=line;
  const rule=knowledge.limits.get(limit)!;
  const name=rule.underRule??rule.id;
  const show=(label:string, question:string, wants:string[])=>{
    const r=ask({question});
    const all=[...(r.verdict?[r.verdict]:[]),...r.checks];
    const f=wants.map((w)=>frag((rule.text as any)[w]));
    const ok=all.some((v)=>v.rule===name&&wants.includes(v.status)&&(wants[0]!=='cannot-tell'||(v.needs?.length??0)>0));
    if(label==='none'&&rule.besideRule&&r.verdict?.rule===rule.besideRule&&r.verdict.status==='cannot-tell')return;
    const top=r.verdict?.rule===name||r.verdict?.rule===rule.besideRule;
    if(!ok||!(top||label!=='none'))console.log(`${limit} [${label}] "${question}" -> ${r.kind}/${r.topic} ${r.verdict?`${r.verdict.rule}:${r.verdict.status}:${(r.verdict.needs??[]).join(',')}`:''} :: ${r.given.map((g:any)=>g.text??g.quantity).join(';')} :: ${r.text.slice(0,110).replace(/\n/g,' ')}`);
  };
  show('none',q,['cannot-tell']);
  if(seen.has(limit))continue; seen.add(limit);
  const e=rule.examples;
  show('holds',line.holds??`${q}, ${words(e.holds)}`,['ok']);
  show('boundary',line.at??`${q}, ${words(e.boundary)}`,['ok']);
  show('breaks',line.beyond??`${q}, ${words(e.breaks)}`,['caution','stop']);
}
for(const id of knowledge.limits.keys()) if(!seen.has(id)) console.log('no line',id);
