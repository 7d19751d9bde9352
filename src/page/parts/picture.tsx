import { useEffect, useMemo } from 'preact/hooks';

const inside = (svg: string, tag: 'title' | 'desc'): string =>
  (new RegExp(`<${tag}\\b[^>]*>([^<]*)</${tag}>`).exec(svg)?.[1] ?? '')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');

/** A finished drawing as it stands in its file, with what the file says of itself as its text. */
export function Picture({ svg, alt }: { svg: string; alt?: string }) {
  const address = useMemo(() => URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' })), [svg]);
  useEffect(() => () => URL.revokeObjectURL(address), [address]);
  return <img src={address} alt={alt ?? [inside(svg, 'title'), inside(svg, 'desc')].filter(Boolean).join('. ')} />;
}
