using Loadmark.Storage.Entities;
using Microsoft.EntityFrameworkCore.Design;

namespace Loadmark.Storage.Sqlite;

/// <summary>For the tool that writes migrations; the program never uses it.</summary>
internal sealed class DesignTimeContexts : IDesignTimeDbContextFactory<StorageContext>
{
    public StorageContext CreateDbContext(string[] args) => new(DatabaseFile.OptionsFor("Data Source=:memory:"));
}
