import { w } from '../../words';
import { FileIcon } from '../parts';
import { buttonClass } from '../parts/Button';
import '../parts/fileButton.css';

/** Chooses many photos at once; looks like a button, and is the platform's own file entry. */
export function ManyFiles({ onFiles }: { readonly onFiles: (files: readonly File[]) => void }) {
  return (
    <label className={`${buttonClass({ size: 'round', kind: 'main' })} file-button`}>
      <input
        type="file"
        accept="image/*"
        multiple
        onChange={(e) => {
          const files = [...(e.target.files ?? [])];
          // The same files can be chosen again afterwards.
          e.target.value = '';
          if (files.length > 0) onFiles(files);
        }}
      />
      <FileIcon />
      <span className="button-text">{w.photos.many}</span>
    </label>
  );
}
