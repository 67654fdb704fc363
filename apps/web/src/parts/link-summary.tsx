import type { ReactNode } from 'react';
import './link-summary.css';

/** The line that opens more of a page, drawn as a link. */
export function LinkSummary({ children }: { readonly children: ReactNode }) {
  return <summary className="link-summary">{children}</summary>;
}
