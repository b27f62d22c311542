import { contextBridge, ipcRenderer } from 'electron';
import { BRIDGE_NAME, CALL_CHANNEL, EVENT_CHANNEL, type Bridge, type HostEvent } from './contract/gate.ts';

/** All that the window gets of Electron: one way to call, one to listen. */
const bridge: Bridge = {
  call: (request) => ipcRenderer.invoke(CALL_CHANNEL, request),
  onEvent(listener) {
    // Electron's own event object stays here: it would lead back to ipcRenderer.
    const receive = (_event: unknown, event: HostEvent) => listener(event);
    ipcRenderer.on(EVENT_CHANNEL, receive);
    return () => void ipcRenderer.off(EVENT_CHANNEL, receive);
  },
};

contextBridge.exposeInMainWorld(BRIDGE_NAME, bridge);
