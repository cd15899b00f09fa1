import { FileIcon } from '../parts';
import { buttonClass } from '../parts/Button';
import '../parts/fileButton.css';

interface FolderButtonProps {
  readonly label: string;
  /** A whole folder with what lies in folders under it. */
  readonly folder?: boolean;
  readonly onFiles: (files: readonly File[]) => void;
}

/** Chooses a folder or many photos; looks like a button, and is the platform's own file entry. */
export function FolderButton({ label, folder = false, onFiles }: FolderButtonProps) {
  return (
    <label className={`${buttonClass({ kind: folder ? 'main' : 'plain' })} file-button`}>
      <input
        type="file"
        multiple
        {...(folder ? { webkitdirectory: '' } : { accept: 'image/*' })}
        onChange={(e) => {
          const files = [...(e.target.files ?? [])];
          // The same folder can be chosen again afterwards.
          e.target.value = '';
          if (files.length > 0) onFiles(files);
        }}
      />
      <FileIcon />
      <span className="button-text">{label}</span>
    </label>
  );
}
