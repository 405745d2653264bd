namespace Loadmark.Browser.Tests.House;

/// <summary>An address that is opened with nothing opened before it, as from a bookmark, and what shows that the page behind it is alive.</summary>
/// <param name="Route">The route that it belongs to, as the page declares it.</param>
/// <param name="Name">What is special about it, in a few words.</param>
/// <param name="PrepareAsync">Puts into the program what is to be there, and answers the address.</param>
/// <param name="UseAsync">Does what somebody does on the page, and sees that it was done.</param>
internal sealed record ColdAddress(string Route, string Name, Func<StoredContent, Task<string>> PrepareAsync, Func<IPage, Task> UseAsync);
