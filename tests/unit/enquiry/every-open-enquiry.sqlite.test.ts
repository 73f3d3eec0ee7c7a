import { everyOpenEnquiry } from "./every-open-enquiry";

everyOpenEnquiry();
