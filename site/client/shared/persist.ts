/** Asks the browser not to clear the cards by itself. False where it refuses or can not be asked. */
export const askForLastingStorage = async (): Promise<boolean> => {
  try {
    const { storage } = navigator;
    return (await storage.persisted()) || (await storage.persist());
  } catch {
    return false;
  }
};
