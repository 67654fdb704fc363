import type { ReactNode } from 'react';
import './notice.css';

/** Something to be told: `care` asks for attention now, `plain` is there to be read. */
export function Notice({
  tone = 'plain',
  title,
  children,
  action,
}: {
  readonly tone?: 'plain' | 'care';
  readonly title?: string | undefined;
  readonly children: ReactNode;
  readonly action?: ReactNode;
}) {
  return (
    <div className={`notice notice-${tone}`} role={tone === 'care' ? 'alert' : 'status'}>
      <div className="notice-text">
        {title && <b>{title}</b>} {children}
      </div>
      {action}
    </div>
  );
}
