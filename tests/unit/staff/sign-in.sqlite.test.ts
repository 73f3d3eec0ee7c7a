import { signingIn } from "./signing-in";

signingIn();
