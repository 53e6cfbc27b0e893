import { engine } from './src/ask/engine.ts';
import { sentenceOf } from './src/ask/sentence.ts';
import { read } from './src/calc/read/read.ts';
import { goalsOf } from './src/ask/goal.ts';
for (const q of process.argv.slice(2)) { const s=sentenceOf(read(q),engine.vocabulary,engine.small);
 console.log(q,'\n  ',s.tokens.map((t:any)=>t.head??(t.figure?`<${t.figure.number} ${t.figure.unit??''}>`:t.text)).join(' '),[...s.places.keys()].filter((k)=>/^[@#]/.test(k)).join(' '),'\n  ',goalsOf(engine.goals,s).slice(0,5).map((g)=>`${g.kind}/${g.id} ${g.score.toFixed(1)} "${g.cue.text}"`).join('\n   ')); }
