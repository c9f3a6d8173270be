export { type ChatRun, runChat } from "./run-chat.tsx";
