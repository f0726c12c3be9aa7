/**
 * The same rider on several bicycles: stock parts ranked by where they put hands and saddle, bicycles side by side,
 * and what each has left to its limits. Nothing here passes a verdict.
 */
package rakeline.study.fit;
