using Loadmark.Storage.Rigs;

namespace Loadmark.Storage.Acceptances;

/// <summary>What became of a change of a record, and the record after it.</summary>
/// <param name="State">Whether it was done; a signed record is in conflict with every change.</param>
/// <param name="Acceptance">The record as it is kept now; null when there is no such record.</param>
public sealed record AcceptanceOutcome(SaveState State, StoredAcceptance? Acceptance);
