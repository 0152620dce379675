// English text of looking through the camera for a code.

export const CAMERA_WORDS = {
  stop: 'Stop the camera',
  noCamera: 'The camera could not be used. Type the code instead.',
  picture: 'What the camera sees',
} as const;
