/**
 * The window: a drive to be turned by hand, counted, reseated and worn on the screen.
 *
 * <p>The window holds nothing but a {@link tightside.session.History}, on its {@link
 * tightside.window.Desk}. An event leads to a new snapshot, and the snapshot is drawn; no control
 * remembers anything of the drive. What a person reads is made in {@code tightside.session}.
 */
package tightside.window;
