// What the plan page needs besides the bench, in one fetch.
import { define } from "../widgets/define.js";
import { BenchGains } from "./bench-gains.js";
import { BenchPlan } from "./bench-plan.js";
import { BenchTrouble } from "./bench-trouble.js";

define("bench-plan", BenchPlan);
define("bench-gains", BenchGains);
define("bench-trouble", BenchTrouble);
