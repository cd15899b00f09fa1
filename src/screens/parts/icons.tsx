import type { ReactNode } from 'react';

/** Our own line drawings, 24 x 24, drawn in the colour of the text beside them. Each stands beside a word or has a name. */
function Icon({ children }: { readonly children: ReactNode }) {
  return (
    <svg
      className="icon"
      width="24"
      height="24"
      viewBox="0 0 24 24"
      fill="none"
      stroke="currentColor"
      strokeWidth="2"
      strokeLinecap="round"
      strokeLinejoin="round"
      aria-hidden="true"
      focusable="false"
    >
      {children}
    </svg>
  );
}

export const CrossIcon = () => (
  <Icon>
    <path d="M6 6l12 12M18 6L6 18" />
  </Icon>
);
export const BackIcon = () => (
  <Icon>
    <path d="M14 5l-7 7 7 7" />
  </Icon>
);
export const OnIcon = () => (
  <Icon>
    <path d="M10 5l7 7-7 7" />
  </Icon>
);
export const UpIcon = () => (
  <Icon>
    <path d="M12 19V6M6 11l6-6 6 6" />
  </Icon>
);
export const DownIcon = () => (
  <Icon>
    <path d="M12 5v13M6 13l6 6 6-6" />
  </Icon>
);
export const TickIcon = () => (
  <Icon>
    <path d="M4 13l5 6L20 5" />
  </Icon>
);
export const AddIcon = () => (
  <Icon>
    <path d="M12 5v14M5 12h14" />
  </Icon>
);
export const UndoIcon = () => (
  <Icon>
    <path d="M8 5L3.5 9.5 8 14M4 9.5h10.5a5 5 0 010 10H9" />
  </Icon>
);
export const CameraIcon = () => (
  <Icon>
    <path d="M4 8h3.5l1.6-2.5h5.8L16.5 8H20v11H4z" />
    <circle cx="12" cy="13.2" r="3.2" />
  </Icon>
);
export const FileIcon = () => (
  <Icon>
    <path d="M6 3h8l4 4v14H6zM14 3v4h4" />
  </Icon>
);

export const QuestionIcon = () => (
  <Icon>
    <path d="M8 9a4 4 0 117 2.5c-1.4 1.2-3 1.8-3 4M12 19.3v.2" />
  </Icon>
);

export const NoteIcon = () => (
  <Icon>
    <circle cx="12" cy="12" r="9" />
    <path d="M12 11v5M12 7.6v.2" />
  </Icon>
);
export const CautionIcon = () => (
  <Icon>
    <path d="M12 4l9 16H3zM12 10v4.5M12 17.2v.2" />
  </Icon>
);
export const StopIcon = () => (
  <Icon>
    <path d="M8.3 3h7.4L21 8.3v7.4L15.7 21H8.3L3 15.7V8.3zM8 12h8" />
  </Icon>
);
export const ProblemIcon = () => (
  <Icon>
    <path d="M12 3l9 9-9 9-9-9zM12 8v5M12 16v.2" />
  </Icon>
);

/** A work on its base. */
export const SculpturesIcon = () => (
  <Icon>
    <path d="M6 21h12v-3H6zM9 18c-.5-4 .5-5 .5-8" />
    <path d="M15 18c.6-5-.2-7-1.5-9.5" />
    <circle cx="11.8" cy="5.5" r="2.5" />
  </Icon>
);
/** Rungs in order. */
export const NextStepsIcon = () => (
  <Icon>
    <path d="M4 6h.1M8 6h12M4 12h.1M8 12h9M4 18h.1M8 18h6" />
  </Icon>
);
/** A leaf of the calendar, with a tick. */
export const PlanIcon = () => (
  <Icon>
    <path d="M4 6h16v14H4zM4 10h16M8 3.5V7M16 3.5V7M8.5 15l2.5 2.5 4.5-5" />
  </Icon>
);
/** Out of the box and back. */
export const CarryIcon = () => (
  <Icon>
    <path d="M5 11v9h14v-9M8.5 7L12 3.5 15.5 7M12 4v10" />
  </Icon>
);
/** Weighing. */
export const MethodIcon = () => (
  <Icon>
    <path d="M12 4v16M8 20h8M5 7h14M5 7l-2.5 6h5zM19 7l-2.5 6h5z" />
  </Icon>
);
export const SettingsIcon = () => (
  <Icon>
    <path d="M4 8h8M18 8h2M4 16h2M12 16h8" />
    <circle cx="15" cy="8" r="2.5" />
    <circle cx="9" cy="16" r="2.5" />
  </Icon>
);
export const HomeIcon = SculpturesIcon;
