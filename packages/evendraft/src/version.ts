/** Version of this library, as its package states it. */
export const libraryVersion = '0.1.0';
