import { deflated } from '../deflated.ts';
import { drawingForm } from './forms.ts';
import { pagesOf } from './pages.ts';
import { layersOf, type Printed, pagePlans } from './pages-drawn.ts';
import { pdfSurface, UNITS_PER_MM } from './pdf-surface.ts';
import { loadType } from './type.ts';

const units = (mm: number): number => Number((mm * UNITS_PER_MM).toFixed(4));

/**
 * `tiles.pdf`: how to print, maps, and every drawing true to size over the pages of the job's paper; nothing where the job wants none.
 * Bytes depend on nothing but the job: no date, no random name. Each drawing stands in the file once; pages show parts of it.
 */
export async function writeTiles(printed: Printed): Promise<Uint8Array | undefined> {
  const { job, layout, sheets } = printed;
  const pages = pagesOf(job, layout, sheets);
  if (!pages) return undefined;
  const { PDFDocument, PDFName, PDFString } = await import('@cantoo/pdf-lib');
  const type = await loadType();
  const file = await PDFDocument.create({ updateMetadata: false });
  const { context } = file;
  file.setTitle(`${job.title}: pages to print`);
  file.setProducer('Evenfield');
  file.setLanguage('en');
  // A reader that obeys does not shrink the pages when it prints (ISO 32000-1, table 150).
  file.catalog.set(PDFName.of('ViewerPreferences'), context.obj({ PrintScaling: 'None' }));

  const drawn = layersOf(pages, printed).map((layers, number) => [`D${number}`, drawingForm(context, layers)] as const);
  const resources = context.nextRef();
  for (const { size, draw } of pagePlans(pages, printed)) {
    const surface = pdfSurface(type, size.along);
    draw(surface);
    const { node } = file.addPage([units(size.across), units(size.along)]);
    node.set(PDFName.of('Resources'), resources);
    node.set(PDFName.of('Contents'), context.register(deflated(context, surface.text())));
  }
  context.assign(
    resources,
    context.obj({ Font: { F: type.embed(context, PDFString.of) }, XObject: Object.fromEntries(drawn) }),
  );
  return file.save({ useObjectStreams: false, addDefaultPage: false, updateFieldAppearances: false });
}
