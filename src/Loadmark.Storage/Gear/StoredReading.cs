using Loadmark.Core.Readings;

namespace Loadmark.Storage.Gear;

/// <summary>A reading as it is stored.</summary>
/// <param name="Id">What the store knows it by.</param>
/// <param name="Reading">The reading.</param>
/// <param name="IsStruckOut">Whether somebody has struck it out, so that it no longer counts.</param>
public sealed record StoredReading(Guid Id, DrawReading Reading, bool IsStruckOut);
