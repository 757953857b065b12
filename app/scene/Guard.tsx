import { Component, type ReactNode } from 'react';

/** Whether this browser draws in three dimensions. Asks for a context of its own and gives it back at once. */
export function hasWebGL(): boolean {
  try {
    const context = document.createElement('canvas').getContext('webgl2');
    context?.getExtension('WEBGL_lose_context')?.loseContext();
    return context !== null;
  } catch {
    return false;
  }
}

/** Said in place of the picture. */
export function NoPicture() {
  return (
    <p className="scene-message" role="status">
      This browser can’t draw the view in three dimensions (WebGL is missing or switched off). The rod, the decisions,
      the facts and the sheets work without it.
    </p>
  );
}

/** Keeps trouble in the picture from taking the rest of the page with it. */
export class Guard extends Component<{ children: ReactNode }, { failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError(): { failed: boolean } {
    return { failed: true };
  }

  override render(): ReactNode {
    return this.state.failed ? <NoPicture /> : this.props.children;
  }
}
