/** `between border repeats 4 and 5` as `repeats 4–5`, for columns whose heading names the border. */
export const shortly = (reason: string): string =>
  reason.replace(/\bbetween (?:border )?(\w+) (\d+) and (\d+)/g, '$1 $2–$3').replaceAll('border repeats', 'repeats');
