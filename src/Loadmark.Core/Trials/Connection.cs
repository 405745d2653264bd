using Loadmark.Core.Checks;

namespace Loadmark.Core.Trials;

/// <summary>A load tried on an outlet.</summary>
/// <param name="Load">The load's tag.</param>
/// <param name="Best">The best way found to connect it, by the rules; where something stands against it, what it would come to.</param>
/// <param name="Objection">What would be harmed, or would not run, if it were connected so; null when nothing would. The program proposes
/// no such connection; who knows that it is plugged like this may enter it all the same.</param>
/// <param name="Remark">What speaks against it though it may (hum, little to spare); null when nothing does.</param>
/// <param name="IsThere">Whether the outlet feeds the load already.</param>
public sealed record Connection(string Load, Trial Best, Finding? Objection, Finding? Remark, bool IsThere);
