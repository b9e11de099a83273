/** A glyph of the page's own set; the word beside it says the same. */
export const Glyph = ({ id }: { readonly id: string }) => (
  <svg className="shape" viewBox="0 0 24 24" aria-hidden="true">
    <use href={`#${id}`} />
  </svg>
);
