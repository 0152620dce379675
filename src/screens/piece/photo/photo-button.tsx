import { useId } from 'preact/hooks';
import { Icon } from '../../../parts/blocks/icons';

interface PhotoButtonProps {
  readonly children: string;
  readonly onFile: (file: File) => void;
  readonly disabled?: boolean | undefined;
}

/** Takes a photo with the phone's camera, or chooses one that is there. */
export function PhotoButton({ children, onFile, disabled }: PhotoButtonProps) {
  const id = useId();
  return (
    <label class="button file-button" for={id}>
      <Icon name="add" />
      <span>{children}</span>
      <input
        id={id}
        type="file"
        accept="image/*"
        disabled={disabled}
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          currentTarget.value = ''; // so that the same file can be chosen again
          if (file) onFile(file);
        }}
      />
    </label>
  );
}
