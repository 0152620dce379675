/** What the tests use of the service worker's own world. */
export interface WorkerScope extends EventTarget {
  readonly registration: ServiceWorkerRegistration;
  readonly NotificationEvent: new (
    kind: string,
    init: { notification: Notification; action: string },
  ) => Event;
}
