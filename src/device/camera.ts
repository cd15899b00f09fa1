import { deviceReason } from './reasonCodes';
import { StoreProblem } from './storeProblem';

/** The camera that looks away from the person, seen on the page. */
export interface Camera {
  readonly stream: MediaStream;
  /** Takes what the camera sees, as large as the browser lets it; a JPEG. Rejects with a StoreProblem. */
  take(seen: HTMLVideoElement): Promise<Blob>;
  /** Lets go of it: its lamp goes out. */
  close(): void;
}

/** Asked for, not insisted on: a browser gives the nearest its camera has. */
const wanted = { facingMode: 'environment', width: { ideal: 4032 }, height: { ideal: 3024 } } as const;

const quality = 0.92;

/** Larger canvases stay empty on some tablets (seen there at 16.7 million pixels). */
const mostPixels = 16_700_000;

/** Part of the Image Capture draft, in some browsers: a photo of the full sensor instead of one frame of the film. */
interface PhotoTaker {
  takePhoto(): Promise<Blob>;
}
type PhotoTakerMaker = new (track: MediaStreamTrack) => PhotoTaker;

/** Rejects with a StoreProblem that says why there is none. */
export const openCamera = async (): Promise<Camera> => {
  const devices = (navigator as { mediaDevices?: MediaDevices }).mediaDevices;
  if (typeof devices?.getUserMedia !== 'function') throw new StoreProblem(deviceReason('no camera on the page', {}));
  const stream = await devices.getUserMedia({ video: wanted, audio: false }).catch((error: unknown) => {
    throw new StoreProblem(whyNot(error));
  });
  return {
    stream,
    take: async (seen) => {
      const track = stream.getVideoTracks()[0];
      if (track?.readyState !== 'live') throw new StoreProblem(deviceReason('camera lost', {}));
      return (await ofTheSensor(track)) ?? (await ofTheFrame(seen));
    },
    close: () => {
      for (const track of stream.getTracks()) track.stop();
    },
  };
};

const whyNot = (error: unknown) => {
  const { name = '', message = '' } = error as Partial<DOMException>;
  if (name === 'NotAllowedError' || name === 'SecurityError') return deviceReason('camera not allowed', {});
  if (name === 'NotFoundError' || name === 'OverconstrainedError') return deviceReason('no camera here', {});
  return deviceReason('camera busy', { said: message || name });
};

const ofTheSensor = async (track: MediaStreamTrack): Promise<Blob | undefined> => {
  const { ImageCapture } = globalThis as { ImageCapture?: PhotoTakerMaker };
  if (!ImageCapture) return undefined;
  // Some cameras refuse, or give a film frame in a format of their own: the frame on the screen serves then.
  const photo = await new ImageCapture(track).takePhoto().catch(() => undefined);
  return photo?.type === 'image/jpeg' && photo.size > 0 ? photo : undefined;
};

const ofTheFrame = async (seen: HTMLVideoElement): Promise<Blob> => {
  const canvas = document.createElement('canvas');
  const scale = Math.min(1, Math.sqrt(mostPixels / (seen.videoWidth * seen.videoHeight)));
  canvas.width = Math.floor(seen.videoWidth * scale);
  canvas.height = Math.floor(seen.videoHeight * scale);
  canvas.getContext('2d')?.drawImage(seen, 0, 0, canvas.width, canvas.height);
  const photo = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', quality));
  if (!photo) throw new StoreProblem(deviceReason('camera lost', {}));
  return photo;
};
