/** What can hurt, in the words of the job sheet. Never folded away. */
export function Care({ items, ends }: { items: readonly { what: string; words: string }[]; ends: string }) {
  return (
    <section class="care" aria-label="Take care">
      <h3>Take care</h3>
      <dl>
        {items.map(({ what, words }) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
      <p>{ends}</p>
    </section>
  );
}
