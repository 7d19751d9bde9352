import { writeLength } from '../units/index.ts';
import { upper } from '../words.ts';
import type { Survey, Tape } from './corners.ts';
import { DIAGONALS, distance, ENDS, nameOf } from './walls.ts';

/** What the readings of a room say of each other: the likeliest slip and what it would have to be, then what to do. */
export function sayDisagreement({ disagreements }: Survey, { units, step }: Tape): string[] {
  const write = (mm: number): string => writeLength(mm, units, step);
  const [worst, next] = disagreements;
  if (!worst) return [];
  const { reading, given, wouldBe, allowed } = worst;
  const way = given > wouldBe ? 'more' : 'less';
  const also = next ? `, then ${nameOf(next.reading)}, which otherwise would have to be ${write(next.wouldBe)}` : '';
  return [
    `The readings do not close: ${nameOf(reading)} was read as ${write(given)}, ${write(Math.abs(given - wouldBe))} ${way} than the other five allow; careful readings may miss by ${write(allowed)}. It would have to be ${write(wouldBe)}.`,
    `measure ${nameOf(reading)} again${also}`,
  ];
}

/** How well the room was measured. */
export function saySurvey(survey: Survey, tape: Tape): string[] {
  const write = (mm: number): string => writeLength(mm, tape.units, tape.step);
  const { room, residuals, disagreements } = survey;
  if (disagreements.length > 0) {
    const [says, hint] = sayDisagreement(survey, tape);
    return [`${says} Until then the room is drawn as near to all six as it can be: ${hint}.`];
  }
  const missing = DIAGONALS.find((diagonal) => !residuals.some(({ reading }) => reading === diagonal));
  if (missing) {
    const [a, b] = ENDS[missing];
    return [
      `${upper(nameOf(missing))} was not measured. It should be ${write(distance(room[a], room[b]))}; measuring it proves the other five readings.`,
    ];
  }
  const most = Math.max(...residuals.map(({ residual }) => Math.abs(residual)));
  const within = Math.max(tape.step, Math.ceil(most / tape.step - 1e-6) * tape.step);
  return [`The six readings of the room agree: each lies within ${write(within)} of the room drawn from them.`];
}
