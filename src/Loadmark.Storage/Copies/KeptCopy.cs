namespace Loadmark.Storage.Copies;

/// <summary>A copy of what is kept that the program made by itself.</summary>
/// <param name="File">Its full path.</param>
/// <param name="Made">When (UTC), to the second.</param>
/// <param name="Reason">Why.</param>
/// <param name="Bytes">How large it is.</param>
public sealed record KeptCopy(string File, DateTimeOffset Made, CopyReason Reason, long Bytes);
