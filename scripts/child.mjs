import { spawn } from 'node:child_process';

const passedOn = ['SIGINT', 'SIGTERM', 'SIGHUP'];

/**
 * Runs a program to its end and gives its exit code (128 + signal when killed). A signal to this process ends the child
 * first, so nothing is left running. `env` is added to the environment; `onMessage` opens a channel to a Node child.
 */
export function run(program, args, { cwd, env = {}, stdout = 'inherit', onMessage } = {}) {
  return new Promise((settle, fail) => {
    const stdio = ['ignore', stdout, 'inherit'];
    if (onMessage) stdio.push('ipc');
    const child = spawn(program, args, { cwd, stdio, env: { ...process.env, ...env } });
    let stopped;
    const handlers = passedOn.map((signal) => {
      const handler = () => {
        stopped = signal;
        child.kill(signal);
      };
      process.on(signal, handler);
      return [signal, handler];
    });
    if (onMessage) child.on('message', onMessage);
    child.on('error', fail);
    child.on('close', (code, signal) => {
      for (const [name, handler] of handlers) process.off(name, handler);
      if (stopped) process.kill(process.pid, stopped);
      else settle(code ?? (signal ? 128 : 1));
    });
  });
}

/** Runs a script with this same Node. */
export function runNode(args, options) {
  return run(process.execPath, args, options);
}
