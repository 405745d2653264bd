namespace Loadmark.Planning.Model;

/// <summary>The loads that pinned feeds put on a return.</summary>
/// <param name="Count">How many there are.</param>
/// <param name="HasDigital">Whether one of them is digital.</param>
/// <param name="HasIsolate">Whether one of them wants a return of its own.</param>
internal readonly record struct PinnedOnReturn(int Count, bool HasDigital, bool HasIsolate)
{
    /// <summary>Whether one of them makes a finding of noise of any company.</summary>
    public bool MindsCompany => HasDigital || HasIsolate;
}
