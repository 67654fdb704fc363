import type { ButtonHTMLAttributes, ReactNode } from 'react';
import './button.css';

export interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  /** `main` is the one thing to do next; `plain` stands beside it; `quiet` is there when wanted. */
  readonly look?: 'main' | 'plain' | 'quiet';
  readonly children: ReactNode;
}

/** A key, 48 px and more. */
export function Button({ look = 'plain', type = 'button', className, children, ...rest }: ButtonProps) {
  return (
    <button type={type} className={`button button-${look}${className ? ` ${className}` : ''}`} {...rest}>
      {children}
    </button>
  );
}
