import type { ReactNode } from 'react';
import { type ButtonKind, type ButtonSize, buttonClass } from './Button';
import './fileButton.css';

interface FileButtonProps {
  readonly children: string;
  readonly onFile: (file: File) => void;
  readonly accept: string;
  /** Straight to the device's own camera. */
  readonly camera?: boolean;
  readonly kind?: ButtonKind;
  readonly size?: ButtonSize;
  readonly wide?: boolean;
  readonly icon?: ReactNode;
  /** For ears, where several stand in one list; begins with what is shown. */
  readonly label?: string;
}

/** Chooses a file or takes a photo; looks like a button, and is the platform's own file entry. */
export function FileButton({ children, onFile, accept, camera, kind, size, wide, icon, label }: FileButtonProps) {
  return (
    <label className={`${buttonClass({ kind, size, wide })} file-button`}>
      <input
        type="file"
        aria-label={label}
        accept={accept}
        capture={camera ? 'environment' : undefined}
        onChange={(e) => {
          const file = e.target.files?.[0];
          // The same file can be chosen again afterwards.
          e.target.value = '';
          if (file) onFile(file);
        }}
      />
      {icon}
      <span className="button-text">{children}</span>
    </label>
  );
}
