import { describe, expect, test } from 'vitest';
import { readPage } from '../../../src/check/read/page.ts';
import { readSvg } from '../../../src/check/read/svg.ts';
import { readTable } from '../../../src/check/read/table.ts';

describe('comma-separated rows (RFC 4180, section 2)', () => {
  test.each([
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
    ['a,,\r\n', [['a', '', '']]],
  ])('%j', (text, rows) => {
    expect(readTable(text)).toEqual({ ok: true, value: rows });
  });

  test('a quote that is never closed, or goes on, is refused', () => {
    expect(readTable('a,"b')).toMatchObject({ ok: false });
    expect(readTable('"a"b')).toMatchObject({ ok: false });
  });
});

describe('sizes in CSS absolute units (CSS Values and Units 3, section 5.2)', () => {
  test.each([
    ['25.4mm', 25.4],
    ['2.54cm', 25.4],
    ['1in', 25.4],
    ['72pt', 25.4],
    ['6pc', 25.4],
    ['96px', 25.4],
    ['96', 25.4],
    ['101.6Q', 25.4],
  ])('%s', (text, mm) => {
    const svg = readSvg(`<svg width="${text}" height="1mm" viewBox="0 0 1 1"/>`);
    expect(svg.ok && svg.value.width).toBeCloseTo(mm, 9);
  });
});

test.each([
  ['<!DOCTYPE svg><svg width="1mm" height="1mm" viewBox="0 0 1 1"/>', /document type/],
  ['<!DOCTYPE svg [<!ENTITY a "b">]><svg width="1mm" height="1mm" viewBox="0 0 1 1">&a;</svg>', /document type/],
  ['<svg width="1mm" height="1mm" viewBox="0 0 1 1">&a;</svg>', /not well-formed/],
  ['<svg width="1mm" height="1mm" viewBox="0 0 1 1">', /not well-formed/],
  ['<svg width="1mm" height="1mm" viewBox="0 0 1 1"><path d="M0 0" d="M1 1"/></svg>', /not well-formed/],
  ['<svg width="1mm" height="1mm" viewBox="0 0 1 1"><svg width="1mm" height="1mm" viewBox="0 0 1 1"/></svg>', /inside/],
  ['<svg width="100%" height="1mm" viewBox="0 0 1 1"/>', /not stated as lengths/],
  ['<svg width="1mm" height="1mm" viewBox="0 0 1"/>', /viewBox/],
  ['<svg width="1mm" height="1mm" viewBox="0 0 NaN 1"/>', /viewBox/],
  [`<svg width="1mm" height="1mm" viewBox="0 0 1 1">${'<g>'.repeat(100)}${'</g>'.repeat(100)}</svg>`, /deep/],
  ['<html/>', /not an SVG/],
  ['', /no SVG|well-formed/],
])('%s is refused', (text, says) => {
  const svg = readSvg(text);
  expect(svg.ok).toBe(false);
  expect(!svg.ok && svg.says).toMatch(says);
});

test('a path that something could move says so', () => {
  const svg = readSvg('<svg width="1mm" height="1mm" viewBox="0 0 1 1"><g style="x"><path/></g><path/></svg>');
  expect(svg.ok && svg.value.paths.map((path) => path.mover)).toEqual(['g style', undefined]);
});

test('a page is read as a person reads it', () => {
  const page = readPage(
    '<!doctype html><html><style>p{}</style><p>150 3/8&quot; &amp; 5&#39;</p><script>x</script></html>',
  );
  expect(page.ok && page.value.trim()).toBe(`150 3/8" & 5'`);
  expect(readPage('<!doctype html><html><p>')).toMatchObject({ ok: false });
  expect(readPage('<!doctype html><html><style></html>')).toMatchObject({ ok: false });
});
