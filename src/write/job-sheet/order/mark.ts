import { counted } from '../../../words.ts';
import type { Stage, Work } from './stage.ts';

const AXIS = [
  'Find the axis at both ends and snap it with pale chalk: red and blue chalk stain.',
  'Square a base line across the axis at the near end, then make every mark of the axis and of both edges from it.',
  'Join equal numbers across. Pull the marks to either side of the axis and join those along.',
];

/** Lines and marks, before any pattern. */
export const mark = ({ marks, marking }: Work): Stage => ({
  title: 'Mark',
  steps: [
    ...(marking ?? AXIS),
    `There are ${counted(marks.marks, 'mark')} on ${counted(marks.lines, 'line')}: tick each off in “Marks”.`,
    'Go through “Is it square?”. Put right what is off now; nothing later can.',
    'Fix the lines that are needed with a light pencil line, and brush the chalk off as you go.',
  ],
});
