import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jobName, plainName, titleOf } from '../../src/job/name.ts';

test.each([
  ['Back passage', 'back-passage'],
  ['  Hall & stairs (2nd try) ', 'hall-stairs-2nd-try'],
  ['Entrée, côté jardin', 'entree-cote-jardin'],
  ['Straße', 'strasse'],
  ['../../etc/passwd', 'etc-passwd'],
  ['C:\\Windows', 'c-windows'],
  ['..', 'from-file'],
  ['Прихожая', 'from-file'],
  ['🏠', 'from-file'],
  ['', 'from-file'],
])('%j becomes %s', (title, name) => expect(jobName(title, 'jobs/From file.job.yaml')).toBe(name));

test.each([['..'], ['/'], ['-.yaml'], ['.job.yaml'], ['']])('nothing to go by in %j', (file) =>
  expect(jobName('!', file)).toBe('job'),
);

// Names that Windows keeps for devices: Microsoft, "Naming Files, Paths, and Namespaces".
test.each(['CON', 'prn', 'Aux', 'NUL', 'com1', 'COM9', 'lpt1', 'LPT9', 'COM¹'])('%s is not taken as it is', (title) =>
  expect(jobName(title, 'f')).toMatch(/^[a-z]{3}\d?-job$/),
);

test.each([
  ['back-passage.job.yaml', 'Back passage'],
  ['jobs/back_passage.yml', 'Back passage'],
  ['C:\\jobs\\hall.job.yaml', 'Hall'],
  ['-', 'Job'],
  ['', 'Job'],
])('%j is titled %s', (file, title) => expect(titleOf(file)).toBe(title));

test('whatever the title, the folder stays a plain name', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), fc.string(), (title, file) => {
      expect(jobName(title, file)).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(jobName(title, file).length).toBeLessThanOrEqual(64);
      expect(titleOf(file)).toMatch(/\S/);
    }),
  );
  fc.assert(
    fc.property(fc.string(), (text) => {
      const name = plainName(text);
      if (name !== undefined) expect(plainName(name)).toBe(name);
    }),
  );
});
