/** Serves dist/ as a static host does, on PORT or 4321. */
import { createServer } from 'node:http';
import { siteHandler } from './site-handler.ts';

const port = Number(process.env['PORT'] ?? 4321);
const server = createServer(siteHandler('dist'));
server.on('error', (error: NodeJS.ErrnoException) => {
  console.error(
    error.code === 'EADDRINUSE'
      ? `Port ${port} is taken. Stop the other program, or choose a port: PORT=4322 npm start`
      : error.message,
  );
  process.exit(1);
});
server.listen(port, () => console.log(`http://localhost:${port}`));
