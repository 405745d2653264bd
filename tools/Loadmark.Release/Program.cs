using Loadmark.Release;

// Makes the files of a release that tell of others' work, from the packages that were restored:
//   dotnet run --project tools/Loadmark.Release            writes them
//   dotnet run --project tools/Loadmark.Release -- check   says whether those in the repository are what it would write
// It ends with 1 where a licence is unknown or unfit, or a file is not what it would write.
if (args is not ([] or ["check"]))
{
    Console.Error.WriteLine("usage: dotnet run --project tools/Loadmark.Release [-- check]");
    return 2;
}

var root = new DirectoryInfo(AppContext.BaseDirectory);
while (root is not null && !File.Exists(Path.Combine(root.FullName, "Loadmark.slnx")))
    root = root.Parent;
if (root is null)
{
    Console.Error.WriteLine("This is run from within the repository.");
    return 2;
}

var inventory = Inventory.Of(root.FullName);
foreach (var fault in inventory.Faults)
    Console.Error.WriteLine(fault);
if (inventory.Faults.Count > 0)
    return 1;
var stale = 0;
foreach (var (path, text) in ReleaseFiles.Make(root.FullName, inventory))
{
    var file = Path.Combine(root.FullName, path);
    if (File.Exists(file) && await File.ReadAllTextAsync(file) == text)
        continue;
    if (args is ["check"])
    {
        Console.Error.WriteLine($"{path} is not what the packages say. Run: dotnet run --project tools/Loadmark.Release");
        stale++;
        continue;
    }

    await File.WriteAllTextAsync(file, text);
    Console.WriteLine($"{path} was written.");
}

return stale == 0 ? 0 : 1;
