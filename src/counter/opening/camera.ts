import { codeReader, type CodeReader } from './code-reader.ts';

/** Why there is no camera to start: the browser reads no codes, or lets no page of this address have a camera. */
export type NoCamera = 'no-reader' | 'no-camera';
/** Why it didn't start, or stopped. */
export type CameraTrouble = 'refused' | 'none' | 'busy' | 'failed';

export type CameraState =
  /** It isn't known yet whether codes can be read. */
  | { is: 'unknown' }
  | { is: 'absent'; why: NoCamera }
  | { is: 'off'; trouble?: CameraTrouble }
  | { is: 'starting' }
  | { is: 'on'; stream: MediaStream };

/** Pause between two looks [ms]: a code is held still for longer, and a tablet is to stay cool. */
const betweenLooks = 120;

/** What browsers call it when a camera can't be had (Media Capture and Streams, section 10.2). */
const troubles: Readonly<Record<string, CameraTrouble>> = {
  NotAllowedError: 'refused', SecurityError: 'refused', NotFoundError: 'none', OverconstrainedError: 'none', NotReadableError: 'busy', AbortError: 'busy',
};

const stopAll = (stream: MediaStream) => { for (const track of stream.getTracks()) track.stop(); };

/** The camera as long as it is looked through, and not a moment longer: it stops when a code was taken, when the page is hidden, and when it is told to. */
export class Camera {
  state: CameraState = { is: 'unknown' };
  private reader: CodeReader | undefined;
  private video: HTMLVideoElement | undefined;
  /** Which start is meant: one that was stopped meanwhile comes too late. */
  private started = 0;

  /**
   * @param changed  shows the page anew
   * @param take     is handed what a code says; true where that is what was looked for
   */
  constructor(private readonly changed: () => void, private readonly take: (text: string) => boolean) {}

  /** Finds out whether there is anything to start. */
  async prepare() {
    document.addEventListener('visibilitychange', this.hidden);
    if (this.state.is !== 'unknown') return;
    this.reader = await codeReader();
    if (!this.reader) return this.go({ is: 'absent', why: 'no-reader' });
    // Off a secure address browsers leave it out, whatever the types say.
    const devices = navigator.mediaDevices as MediaDevices | undefined;
    this.go(devices ? { is: 'off' } : { is: 'absent', why: 'no-camera' });
  }

  async start() {
    const start = ++this.started;
    this.go({ is: 'starting' });
    try {
      const stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
      if (start !== this.started) return stopAll(stream);
      for (const track of stream.getTracks()) track.addEventListener('ended', () => this.lost(stream));
      this.go({ is: 'on', stream });
      await this.look(stream);
    } catch (trouble) {
      if (start !== this.started) return;
      this.stop();
      this.go({ is: 'off', trouble: troubles[(trouble as Error).name] ?? 'failed' });
    }
  }

  stop() {
    this.started += 1;
    if (this.state.is === 'on') stopAll(this.state.stream);
    if (this.state.is === 'on' || this.state.is === 'starting') this.go({ is: 'off' });
  }

  /** The page no longer shows it. */
  leave() {
    document.removeEventListener('visibilitychange', this.hidden);
    this.stop();
  }

  /** Where on the page the picture is shown. */
  readonly seeThrough = (video: Element | undefined) => { this.video = video as HTMLVideoElement | undefined; };

  private readonly hidden = () => { if (document.hidden) this.stop(); };

  private isOn(stream: MediaStream) {
    return this.state.is === 'on' && this.state.stream === stream;
  }

  private lost(stream: MediaStream) {
    if (!this.isOn(stream)) return;
    this.stop();
    this.go({ is: 'off', trouble: 'failed' });
  }

  private async look(stream: MediaStream) {
    while (this.isOn(stream)) {
      const texts = this.video && this.video.readyState >= HTMLMediaElement.HAVE_CURRENT_DATA ? await this.reader!(this.video) : [];
      if (!this.isOn(stream)) return;
      if (texts.some((text) => this.take(text))) return this.stop();
      await new Promise((resolve) => { setTimeout(resolve, betweenLooks); });
    }
  }

  private go(state: CameraState) {
    this.state = state;
    this.changed();
  }
}
